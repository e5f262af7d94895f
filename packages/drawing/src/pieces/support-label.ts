import type { LoadCase } from '@cribwright/engine';
import type { Label } from '../labels/label.js';
import type { Box } from '../scene/bounds.js';
import type { Thing, ThingKind } from '../space/thing.js';
import { gravest, type Look, notChecked } from '../views/look.js';
import { useLimit } from './use-level.js';

/** The label of an element: its name, and what it carries against what it may. */
export function labelFor(thing: Thing, look: Look, box: Box, others: readonly string[] = []): Label {
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const names = [thing.name, ...others].join(', ');
  return {
    key: thing.id,
    at: centre,
    clear: { x: (box.right - box.left) / 2, y: (box.bottom - box.top) / 2 },
    name: names,
    beside: sizeOf(thing, look),
    lines: linesFor(thing, look),
    badge: overused(thing, look) ? 'danger' : gravest(look.findingsOn(thing.id)),
    ref: thing.ref,
  };
}

/** Past its limit is unsafe to look at, whatever the findings say. */
export function overused(thing: { readonly id: string }, look: Look): boolean {
  const use = look.support(thing.id)?.figures.use?.value?.high;
  return use !== undefined && use > useLimit(look.plan) * (1 + 1e-9);
}

function sizeOf(thing: Thing, look: Look): string | undefined {
  const { height, angle } = look.support(thing.id)?.figures ?? {};
  if (height !== undefined) return look.say.figure(height);
  return angle === undefined ? undefined : look.say.figure(angle);
}

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
  const moment = look.lost ?? (look.choice.stage === undefined ? undefined : look.asBuilt);
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
