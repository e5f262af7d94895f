import type { Figure } from '@cribwright/messages';
import type { Crib, PlacedCrib, Plan, Timber } from '@cribwright/model';
import { contactWidths, dressed, timberCount } from '@cribwright/model';
import { placeCrib } from '@cribwright/model/internal';
import { type CribWorking, cribWorking } from '../crib/crib-working.js';
import type { Workings } from '../derived/workings.js';
import { cribUse } from '../use/crib-use.js';

/** One way to build a crib at its place, with what it comes to. */
export interface Build {
  readonly crib: Crib;
  /** How many pieces of timber it takes: a count. */
  readonly timbers: number;
  readonly height: Figure;
  readonly heightLimit: Figure;
  readonly capacity: Figure;
  /**
   * Load over capacity at the worst contact: a ratio, over 1 where it is too much. More contacts than now are not
   * counted on to take a share: where the load comes down beside one of them, they do not.
   */
  readonly use: number;
}

/** A timber that may be built with, and how many there are; without a count, as many as it takes. */
export interface Stock {
  readonly timber: Timber;
  readonly count: number | undefined;
}

/** What the units that respond carry; without any, what the plan's cribs are built of. */
export function stockOf({ units, cribs }: Plan): readonly Stock[] {
  const carried = units
    .flatMap((u) => u.carries)
    .flatMap((s) => (s.timber === undefined ? [] : [{ timber: s.timber, count: s.count }]));
  if (carried.length > 0) return carried;
  const seen = new Set<string>();
  return cribs.flatMap(({ timber }) => {
    const key = `${timber.name} ${timber.length}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ timber, count: undefined }];
  });
}

const sides = [2, 3, 4] as const;

/**
 * Every build of a crib, at its place and under what it captures, that reaches, stands within its height limit and
 * carries its load within the policy's limit: the fewest timbers first, then the lowest use.
 *
 * The load is the one worked out for the crib as it is. A stiffer build draws more: check the plan again with it.
 */
export const buildsFor = (
  c: CribWorking,
  w: Workings,
  stock: readonly Stock[] = stockOf(w.plan),
): readonly Build[] => [...bestFirst(c, w, stock)];

/** The first of `buildsFor`, without working out those after it; `undefined` where there is none. */
export function bestBuildFor(c: CribWorking, w: Workings): Build | undefined {
  for (const build of bestFirst(c, w, stockOf(w.plan))) return build;
  return undefined;
}

/** One number of timbers after the other, so that whoever wants the fewest works out no more than these. */
function* bestFirst(c: CribWorking, w: Workings, stock: readonly Stock[]): Generator<Build> {
  const worst = worstContact(c, w);
  if (worst === undefined) return;
  const limit = w.limit('use limit').value?.low ?? 1;
  const byTimbers = new Map<number, Crib[]>();
  for (const { timber, count } of stock)
    for (const crib of candidates(c, dressed(timber, w.plan.policy), w)) {
      const timbers = timberCount(crib);
      if (count !== undefined && timbers > count) continue;
      const same = byTimbers.get(timbers);
      if (same) same.push(crib);
      else byTimbers.set(timbers, [crib]);
    }
  for (const [timbers, cribs] of [...byTimbers].sort(([a], [b]) => a - b))
    yield* cribs
      .flatMap((crib) => {
        const build = judged(placeCrib(crib, w.placed.around), c, worst, w);
        return build === undefined || build.use > limit + 1e-9 ? [] : [{ ...build, timbers }];
      })
      .sort((a, b) => a.use - b.use);
}

/**
 * Every build of a crib, at its place and under what it captures, that reaches and stands within its height limit,
 * whatever it carries: the fewest timbers first.
 */
export function buildsThatStand(c: CribWorking, w: Workings): readonly Crib[] {
  return stockOf(w.plan)
    .flatMap(({ timber, count }) =>
      candidates(c, dressed(timber, w.plan.policy), w).flatMap((crib) => {
        const placed = placeCrib(crib, w.placed.around);
        if (count !== undefined && placed.timbers > count) return [];
        return judged(placed, c, 0, w) === undefined ? [] : [placed];
      }),
    )
    .sort((a, b) => a.timbers - b.timbers)
    .map((placed) => placed.crib);
}

/** Load of the most loaded contact, N. `undefined` where any is not known: nothing is offered on a guess. */
function worstContact(c: CribWorking, w: Workings): number | undefined {
  const loads = cribUse(c, w).contacts.flatMap((u) => (u === undefined ? [] : [u.load.value?.high]));
  if (loads.length === 0 || loads.some((l) => l === undefined)) return undefined;
  return Math.max(...loads.flatMap((l) => l ?? []));
}

/** Layouts that fit, each with the courses that leave a gap for its wedges. */
function candidates(c: CribWorking, timber: Timber, w: Workings): readonly Crib[] {
  const room = c.gap.value;
  const closes = c.closes.value;
  if (room === undefined || closes === undefined || !(timber.depth > 0)) return [];
  // What stands between the base and the part, less the shims: courses and wedges fill it.
  const open = { low: room.low + c.placed.height, high: room.high + c.placed.height };
  const courses = Math.floor((open.low - closes.low) / timber.depth + 1e-9);
  if (courses < 1 || open.high - courses * timber.depth > closes.high + 1e-6) return [];
  return sides.flatMap((lengthwise) =>
    sides.flatMap((crosswise) => {
      const crib = { ...c.crib, timber, courses, layout: { lengthwise, crosswise } };
      const widths = contactWidths(crib);
      const fits =
        lengthwise * timber.width <= widths.crosswise + 1e-9 &&
        crosswise * timber.width <= widths.lengthwise + 1e-9;
      return fits && crib.overhang <= (w.limit('most overhang').value?.low ?? crib.overhang) ? [crib] : [];
    }),
  );
}

function judged(
  placed: PlacedCrib,
  now: CribWorking,
  worst: number,
  w: Workings,
): Omit<Build, 'timbers'> | undefined {
  const then = cribWorking(placed, w.plan);
  const height = then.height.value?.high;
  const limit = then.heightLimit.value?.low;
  const capacity = then.contactCapacity.value?.low;
  if (height === undefined || limit === undefined || capacity === undefined || !(capacity > 0))
    return undefined;
  if (then.loaded === 0 || then.loaded < Math.min(now.loaded, then.contacts.length)) return undefined;
  if (height > limit + 1e-9) return undefined;
  return {
    crib: placed.crib,
    height: then.height,
    heightLimit: then.heightLimit,
    capacity: then.capacity,
    use: (worst * Math.max(1, now.loaded / then.loaded)) / capacity,
  };
}
