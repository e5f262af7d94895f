import { nameOf } from '../pieces/name-of.js';
import type { Look } from '../views/look.js';
import { momentOf } from '../views/look.js';

/** The drawing in words: what is shown, where each thing stands, what is wrong with it, and the loads at the moment. */
export function describe(look: Look, what: string): string {
  const { say, plan } = look;
  const lines = [
    `${what}.`,
    ...momentOf(look),
    ...(look.unchecked ? ['The checks have not run yet: no load and no limit is shown.'] : []),
  ];
  const places = new Map<string, { readonly x: number; readonly y: number }>([
    ...plan.vehicles.map((v) => [v.id, v.at] as const),
    ...plan.stepChocks.map((s) => [s.id, s.at] as const),
    ...plan.struts.map((s) => [s.id, s.foot] as const),
    ...plan.cribs.map((c) => [c.id, c.at] as const),
  ]);
  for (const thing of look.things) {
    const support = places.get(thing.id);
    const place =
      support === undefined
        ? ''
        : `, ${say.long(support.x)} back from the front, ${sideWords(support.y, say.long)}`;
    lines.push(`${nameOf(thing, look)}${place}.`);
  }
  const moment = look.lost ?? look.asBuilt;
  for (const reaction of moment?.reactions ?? [])
    lines.push(`${reaction.label}: ${say.force(reaction.load)}.`);
  return lines.join(' ');
}

/** Which side of the centreline, and how far. */
export const sideWords = (y: number, long: (metres: number) => string): string =>
  Math.abs(y) < 0.0005 ? 'on the centreline' : `${y < 0 ? 'driver' : 'passenger'} side ${long(Math.abs(y))}`;
