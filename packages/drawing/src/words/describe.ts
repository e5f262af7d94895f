import type { Reaction } from '@cribwright/engine';
import type { Look } from '../look/look.js';
import { momentOf } from '../look/look.js';
import { notWholeLines } from '../look/not-whole.js';
import { spokenOf } from './name-of.js';
import { sentences } from './sentences.js';

/** The drawing in words: what is shown, where each thing stands, what is wrong with it, and the loads at the moment. */
export function describe(look: Look, what: string): string {
  const { say, plan } = look;
  const lines = [
    what,
    ...momentOf(look),
    ...notWholeLines(look.analysis, 6),
    look.unchecked ? 'The checks have not run yet: no load and no limit is shown' : '',
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
    const { called, faults } = spokenOf(thing, look);
    lines.push(`${called}${place}`, faults);
  }
  return sentences([...lines, ...loads(look)]);
}

/** What is carried where at the moment, as far as it is about what is shown. */
function loads(look: Look): readonly string[] {
  const moment = look.lost ?? look.asBuilt;
  const shown = new Map(look.things.map((t) => [t.id, `${t.kind} ${t.name}`]));
  const own = (moment?.reactions ?? []).filter((r) => shown.has(r.element));
  if (moment === undefined || own.length === 0) return [];
  const carrying = (r: Reaction) => r.load.high > 0;
  const idle = new Set(own.filter((r) => !carrying(r)).map((r) => r.element));
  for (const r of own.filter(carrying)) idle.delete(r.element);
  return [
    look.lost === undefined
      ? `Loads ${look.choice.stage === undefined ? 'of the finished work' : 'at this stage'}, as built`
      : `Loads if this goes: ${look.say.words.message(look.lost.title)}`,
    ...own
      .filter((r) => !idle.has(r.element))
      .map((r) => `${look.say.words.message(r.label)}: ${look.say.force(r.load)}`),
    idle.size === 0 ? '' : `Carrying nothing: ${[...idle].map((id) => shown.get(id) ?? id).join(', ')}`,
  ];
}

/** Which side of the centerline, and how far. */
export const sideWords = (y: number, long: (meters: number) => string): string =>
  Math.abs(y) < 0.0005 ? 'on the centerline' : `${y < 0 ? 'driver' : 'passenger'} side ${long(Math.abs(y))}`;
