import type { LoadCase } from '@cribwright/engine';
import type { Label } from '../labels/label.js';
import type { Box } from '../scene/bounds.js';
import type { Thing, ThingKind } from '../space/thing.js';
import { gravest, type Look, notChecked } from '../views/look.js';
import { useLimit } from './use-level.js';

/**
 * The label of an element: its name, and what it carries against what it may. Of several that share a label, that
 * of the one that is worst off.
 */
export function labelFor(thing: Thing, look: Look, box: Box, others: readonly Thing[] = []): Label {
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const all = [thing, ...others];
  return {
    key: thing.id,
    at: centre,
    clear: { x: (box.right - box.left) / 2, y: (box.bottom - box.top) / 2 },
    name: all.map((t) => t.name).join(', '),
    beside: sizeOf(thing, look),
    lines: worstLines(all, look),
    badge: all.some((t) => overused(t, look)) ? 'danger' : gravest(all.flatMap((t) => look.findingsOn(t.id))),
    ref: thing.ref,
  };
}

/** Past its limit is unsafe to look at, whatever the findings say. */
export function overused(thing: { readonly id: string }, look: Look): boolean {
  const use = look.support(thing.id)?.figures.use?.value?.high;
  return use !== undefined && use > useLimit(look.plan) * (1 + 1e-9);
}

/** Whether one label can speak of both: they are of one size, and of both the load is known, or of neither. */
export const mayShare = (a: Thing, b: Thing, look: Look): boolean =>
  sizeOf(a, look) === sizeOf(b, look) &&
  (burdenOn(a, look) === Infinity) === (burdenOn(b, look) === Infinity);

/** A crib's height, a strut's angle. */
function sizeOf(thing: Thing, look: Look): string | undefined {
  const { height, angle } = look.support(thing.id)?.figures ?? {};
  if (height !== undefined) return look.say.figure(height);
  return angle === undefined ? undefined : look.say.figure(angle);
}

/** What the worst off of some elements carries: one whose load is not known before any other. */
function worstLines(things: readonly Thing[], look: Look): readonly string[] {
  const [first, ...rest] = things
    .map((thing) => ({ lines: linesFor(thing, look), burden: burdenOn(thing, look) }))
    .sort((a, b) => b.burden - a.burden);
  if (first === undefined) return [];
  const alike = rest.every(({ lines }) => lines.join() === first.lines.join());
  return alike
    ? first.lines
    : first.lines.map((words) => (/^\d|^now/.test(words) ? `at most ${words}` : words));
}

function burdenOn(thing: Thing, look: Look): number {
  if (look.standing(thing.id) === 'later') return -1;
  const moment = momentShown(look);
  if (moment !== undefined) return loadOn(thing.id, moment)?.high ?? 0;
  const { load, use } = look.support(thing.id)?.figures ?? {};
  if (load === undefined) return -1;
  return load.value === undefined ? Infinity : (use?.value?.high ?? Infinity);
}

/** The case whose loads are shown, where it is not the worst of all. */
const momentShown = (look: Look): LoadCase | undefined =>
  look.lost ?? (look.choice.stage === undefined ? undefined : look.asBuilt);

function linesFor(thing: Thing, look: Look): readonly string[] {
  if (look.standing(thing.id) === 'later') return [];
  const { say } = look;
  if (thing.kind === 'vehicle') {
    const body = look.analysis.bodies.find((b) => b.vehicle === thing.id);
    return body === undefined ? [] : [say.figure(body.weight)];
  }
  if (look.unchecked) return carries.has(thing.kind) ? [notChecked] : [];
  const figures = look.support(thing.id)?.figures ?? {};
  const lines: string[] = [];
  const moment = momentShown(look);
  if (moment !== undefined) {
    const now = loadOn(thing.id, moment);
    if (now !== undefined) lines.push(`now ${say.force(now)}`);
  } else if (figures.load !== undefined) {
    const use = figures.use === undefined ? '' : `, ${say.figure(figures.use)}`;
    lines.push(figures.load.value === undefined ? 'load not known' : `${say.figure(figures.load)}${use}`);
  }
  return lines;
}

/** What carries a load, and is checked for it. */
const carries: ReadonlySet<ThingKind> = new Set(['crib', 'step chock', 'strut', 'tie']);

/** What all contacts of an element carry together in one case, N; `undefined` where it has none in it. */
export function loadOn(element: string, moment: LoadCase) {
  const own = moment.reactions.filter((r) => r.element === element);
  if (own.length === 0) return undefined;
  return {
    low: own.reduce((sum, r) => sum + r.load.low, 0),
    high: own.reduce((sum, r) => sum + r.load.high, 0),
  };
}
