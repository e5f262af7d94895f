import type { LoadCase } from '@cribwright/engine';
import type { Label } from '../labels/place-labels.js';
import type { Box } from '../scene/bounds.js';
import type { Thing } from '../space/thing.js';
import { gravest, type Look } from '../views/look.js';

/** The label of an element: its name, and what it carries against what it may. */
export function labelFor(thing: Thing, look: Look, box: Box, others: readonly string[] = []): Label {
  const centre = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const names = [thing.name, ...others].join(', ');
  return {
    key: thing.id,
    at: centre,
    clear: { x: (box.right - box.left) / 2, y: (box.bottom - box.top) / 2 },
    lines: [names, ...linesFor(thing, look)],
    badge: gravest(look.findingsOn(thing.id)),
    ref: thing.ref,
  };
}

function linesFor(thing: Thing, look: Look): readonly string[] {
  if (look.standing(thing.id) === 'later') return [];
  const { say } = look;
  if (thing.kind === 'vehicle') {
    const body = look.analysis.bodies.find((b) => b.vehicle === thing.id);
    return body === undefined ? [] : [say.figure(body.weight)];
  }
  const figures = look.support(thing.id)?.figures ?? {};
  const lines: string[] = [];
  if (figures.height !== undefined) lines.push(`${say.figure(figures.height)} high`);
  if (figures.angle !== undefined) lines.push(say.figure(figures.angle));
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

/** What all contacts of an element carry together in one case, N; `undefined` where it has none in it. */
export function loadOn(element: string, moment: LoadCase) {
  const own = moment.reactions.filter((r) => r.element === element);
  if (own.length === 0) return undefined;
  return {
    low: own.reduce((sum, r) => sum + r.load.low, 0),
    high: own.reduce((sum, r) => sum + r.load.high, 0),
  };
}
