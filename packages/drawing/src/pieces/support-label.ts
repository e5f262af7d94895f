import type { LoadCase } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Label } from '../labels/label.js';
import { gravest, type Look, notChecked } from '../look/look.js';
import type { Box } from '../scene/bounds.js';
import type { Thing } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';
import { drawnName } from '../text/drawn-name.js';
import { moreWords } from '../text/more-words.js';
import type { Say } from '../text/say.js';
import { shortName } from '../text/short-name.js';
import { useLimit } from './use-level.js';

/**
 * The label of an element: its name, and what it carries against what it may. Of several that share a label, the
 * most that any of them carries.
 */
export function labelFor(thing: Thing, look: Look, box: Box, others: readonly Thing[] = []): Label {
  const center = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const all = [thing, ...others];
  return {
    key: thing.id,
    at: center,
    clear: { x: (box.right - box.left) / 2, y: (box.bottom - box.top) / 2 },
    name: listOf(
      all.map((t) => drawnName(t.name, look.say)),
      look.say,
    ),
    beside: sizeOf(thing, look),
    lines: worstLines(all, look),
    badge: badgeOf(all, look),
    ref: thing.ref,
  };
}

/** Names in a row; of many, the first few and how many more. `most` is how many may be named. */
export const listOf = (names: readonly string[], say: Say, most = 4): string => {
  if (names.length <= most) return names.map(shortName).join(', ');
  const first = names.slice(0, Math.max(1, most - 1));
  return moreWords(first.map(shortName).join(', '), names.length - first.length, say);
};

/** Past its limit is unsafe to look at, whatever the findings say. */
export function overused(thing: { readonly id: string }, look: Look): boolean {
  const use = look.support(thing.id)?.figures.use?.value?.high;
  return use !== undefined && use > useLimit(look.plan) * (1 + 1e-9);
}

/**
 * Whether one label can speak of both: they are of one size, both are as grave, and of both the load is known, or of
 * neither.
 */
export const mayShare = (a: Thing, b: Thing, look: Look): boolean =>
  sizeOf(a, look) === sizeOf(b, look) &&
  badgeOf([a], look) === badgeOf([b], look) &&
  loadIsKnown(a, look) === loadIsKnown(b, look);

/** The sign of the gravest that is known of some elements. */
const badgeOf = (things: readonly Thing[], look: Look): Label['badge'] =>
  things.some((t) => overused(t, look)) ? 'danger' : gravest(things.flatMap((t) => look.findingsOn(t.id)));

/** A crib's height, with its limit where it is past it; a strut's angle. */
function sizeOf(thing: Thing, look: Look): string | undefined {
  const { height, heightLimit, angle } = look.support(thing.id)?.figures ?? {};
  if (height === undefined) return angle === undefined ? undefined : look.say.figure(angle);
  const [own, limit] = [height.value?.high, heightLimit?.value?.low];
  const over = own !== undefined && limit !== undefined && own > limit * (1 + 1e-9);
  const words = look.say.figure(height);
  return over
    ? look.say.message(
        message('piece.height-over-limit', {
          height: name(words),
          limit: name(look.say.figure(heightLimit)),
        }),
      )
    : words;
}

/** What some elements carry: the most that any of them does, and the most that any is used. */
function worstLines(things: readonly Thing[], look: Look): readonly string[] {
  const [first = [], ...rest] = things.map((thing) => linesFor(thing, look));
  if (rest.every((lines) => lines.join() === first.join())) return first;
  const there = things.filter((thing) => look.standing(thing.id) !== 'later');
  const moment = momentShown(look);
  if (moment !== undefined) {
    const most = Math.max(0, ...there.map((thing) => loadOn(thing.id, moment)?.high ?? 0));
    return [
      look.say.message(
        message('piece.now-at-most', { load: name(look.say.force({ low: most, high: most })) }),
      ),
    ];
  }
  const most = (key: 'load' | 'use'): Figure | undefined =>
    there
      .flatMap((thing) => look.support(thing.id)?.figures[key] ?? [])
      .sort((a, b) => (b.value?.high ?? Infinity) - (a.value?.high ?? Infinity))[0];
  const [load, use] = [most('load'), most('use')];
  if (load?.value === undefined) return [look.say.message(term('piece.load-not-known'))];
  const own = name(look.say.figure(load));
  return [
    look.say.message(
      use === undefined
        ? message('piece.at-most', { load: own })
        : message('piece.at-most-use', { load: own, use: name(look.say.figure(use)) }),
    ),
  ];
}

const loadIsKnown = (thing: Thing, look: Look): boolean => {
  const load = look.support(thing.id)?.figures.load;
  return load === undefined || load.value !== undefined;
};

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
  if (look.unchecked) return thingKinds[thing.kind].carries ? [say.message(notChecked)] : [];
  const figures = look.support(thing.id)?.figures ?? {};
  const lines: string[] = [];
  const moment = momentShown(look);
  if (moment !== undefined) {
    const now = loadOn(thing.id, moment);
    if (now !== undefined) lines.push(say.message(message('piece.now-load', { load: name(say.force(now)) })));
  } else if (figures.load !== undefined) {
    const use = figures.use === undefined ? '' : `, ${say.figure(figures.use)}`;
    lines.push(
      figures.load.value === undefined
        ? say.message(term('piece.load-not-known'))
        : `${say.figure(figures.load)}${use}`,
    );
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
