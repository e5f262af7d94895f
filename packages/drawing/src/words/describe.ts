import { elementMessage, type Reaction } from '@cribwright/engine';
import { list, type Message, message, name, term } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { momentOf } from '../look/look.js';
import { notWholeLines } from '../look/not-whole.js';
import type { Say } from '../text/say.js';
import { spokenOf } from './name-of.js';
import { sentences } from './sentences.js';

/** The drawing in words: what is shown, where each thing stands, what is wrong with it, and the loads at the moment. */
export function describe(look: Look, what: string): string {
  const { say, plan } = look;
  const lines = [
    what,
    ...momentOf(look),
    ...notWholeLines(look.analysis, 6, say.words),
    look.unchecked ? say.message(term('view.not-checked-spoken')) : '',
  ];
  const places = new Map<string, { readonly x: number; readonly y: number }>([
    ...plan.vehicles.map((v) => [v.id, v.at] as const),
    ...plan.stepChocks.map((s) => [s.id, s.at] as const),
    ...plan.struts.map((s) => [s.id, s.foot] as const),
    ...plan.cribs.map((c) => [c.id, c.at] as const),
  ]);
  for (const thing of look.things) {
    const support = places.get(thing.id);
    const { called, faults } = spokenOf(thing, look);
    const placed =
      support === undefined
        ? called
        : say.message(
            message('spoken.placed', {
              thing: name(called),
              back: name(say.long(support.x)),
              side: sideWords(support.y, say),
            }),
          );
    lines.push(placed, faults);
  }
  return sentences([...lines, ...loads(look)]);
}

/** What is carried where at the moment, as far as it is about what is shown. */
function loads(look: Look): readonly string[] {
  const { say } = look;
  const moment = look.lost ?? look.asBuilt;
  const shown = new Map(look.things.map((t) => [t.id, elementMessage(look.plan, t.id)]));
  const own = (moment?.reactions ?? []).filter((r) => shown.has(r.element));
  if (moment === undefined || own.length === 0) return [];
  const carrying = (r: Reaction) => r.load.high > 0;
  const idle = new Set(own.filter((r) => !carrying(r)).map((r) => r.element));
  for (const r of own.filter(carrying)) idle.delete(r.element);
  return [
    look.lost === undefined
      ? say.message(term(look.choice.stage === undefined ? 'spoken.loads-finished' : 'spoken.loads-at-stage'))
      : say.message(message('spoken.loads-if-lost', { loss: look.lost.title })),
    ...own
      .filter((r) => !idle.has(r.element))
      .map((r) => say.message(message('piece.load', { element: r.label, load: name(say.force(r.load)) }))),
    idle.size === 0
      ? ''
      : say.message(
          message('spoken.no-load', {
            elements: list(
              [...idle].map((id) => shown.get(id) ?? name(id)),
              'plain',
            ),
          }),
        ),
  ];
}

/** Which side of the centerline, and how far. */
export const sideWords = (y: number, say: Say): Message =>
  Math.abs(y) < 0.0005
    ? term('spoken.centerline')
    : message(y < 0 ? 'spoken.driver-side' : 'spoken.passenger-side', {
        distance: name(say.long(Math.abs(y))),
      });
