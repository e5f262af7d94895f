import type { PlanBody } from '../supports/plan-bodies.js';
import type { WantedLosses } from './build-corner.js';
import { type CaseSigns, unlike } from './case-signs.js';
import type { JointCorner } from './components.js';
import {
  atEnd,
  axesOf,
  cornerPlace,
  mixed,
  placeKey,
  type RangeAxis,
  type RangePlace,
  wayTo,
} from './range-place.js';

/** Works out the wanted losses at a place, and says which contacts push. `corner` is one of those it lies between. */
export type TryPlace = (
  place: RangePlace,
  index: number,
  corner: JointCorner,
  wanted?: WantedLosses,
) => Generator<void, CaseSigns>;

/** Halvings of a line. Near a worst place each of its pieces is halved as often again: to 1/256 of a range. */
const deepest = 6;
/** How near: one such piece, as a share of the range. */
const piece = 1 / 2 ** deepest;
/** Where it falls at both ends it may rest between, and is tried in so many halvings. */
const blind = 2;
/** Of more corners than this, edges are tried at the worst alone. */
const few = 8;
/** So many places are tried along the edges, coarse ones first, and so many more near the worst. */
export interface Budget {
  readonly edges: number;
  readonly near: number;
}
export const thorough: Budget = { edges: 240, near: 160 };
/** For whoever is still typing. */
export const endsAlone: Budget = { edges: 0, near: 0 };
/** How often the search turns from the worst places found so far into another range. */
const turns = 4;
/**
 * Ends of lines that are tried in one round beside the corners. Reached only with very many ranges, where not every
 * mix of their ends is a corner: then the rule unsupported-end says that the check has not passed.
 */
const mostEnds = 400;

/** A place to be tried, and the corner it counts to. */
interface Stop {
  readonly place: RangePlace;
  readonly corner: JointCorner;
}

interface Tried extends Stop {
  readonly index: number;
  readonly signs: CaseSigns;
}

type Line = readonly [from: Tried, to: Tried];

/**
 * Tries every corner of the ranges, and places between them. As a center of gravity wanders, a contact opens or
 * closes on the way, and then another carries more there than at either end. Between such turns forces change
 * evenly, so that a place between two others is tried only where different contacts push at the two. First along
 * the edges of the ranges, of many along those at the worst corners; then through the worst places found, along
 * every range and aslant.
 *
 * @param worst where each point carries most so far.
 */
export function* tryRanges(
  corners: readonly JointCorner[],
  bodies: readonly PlanBody[],
  tryPlace: TryPlace,
  worst: () => readonly number[],
  most: Budget,
): Generator<void, readonly RangePlace[]> {
  const places: RangePlace[] = [];
  const known = new Map<string, Tried>();
  const byIndex: Tried[] = [];
  function* tried(place: RangePlace, corner: JointCorner, wanted?: WantedLosses): Generator<void, Tried> {
    const key = placeKey(place);
    const before = known.get(key);
    if (before !== undefined) return before;
    const index = places.push(place) - 1;
    const now = { place, index, corner, signs: yield* tryPlace(place, index, corner, wanted) };
    known.set(key, now);
    byIndex.push(now);
    return now;
  }
  for (const corner of corners) {
    yield* tried(cornerPlace(corner, bodies), corner);
    yield;
  }
  const worstSoFar = () => worst().flatMap((index) => byIndex[index] ?? []);
  const axes = axesOf(bodies);
  const ways = waysOf(axes);
  const done = new Set<string>();
  const lineOf = (...stops: readonly Tried[]): readonly Line[] =>
    stops.slice(1).flatMap((to, i): Line[] => {
      const from = stops[i];
      return from === undefined || from === to ? [] : [[from, to]];
    });
  /** Tries the stops of a line that are not yet tried, and yields after each one: one place can take a while. */
  function* stops(line: readonly Stop[], end: number): Generator<void, readonly Line[]> {
    const found: Tried[] = [];
    for (const { place, corner } of line) {
      const isNew = !known.has(placeKey(place));
      if (isNew && places.length >= end) return [];
      found.push(yield* tried(place, corner));
      if (isNew) yield;
    }
    return lineOf(...found);
  }
  /** The line through a place along a range, from end to end, in two pieces where the place lies inside. */
  const lineThrough = (through: Tried, axis: RangeAxis): readonly Stop[] => {
    const low = atEnd(through.place, axis, 'low', bodies);
    const high = atEnd(through.place, axis, 'high', bodies);
    const key = `${placeKey(low)}|${placeKey(high)}`;
    if (done.has(key)) return [];
    done.add(key);
    const { corner } = through;
    return [{ place: low, corner }, through, { place: high, corner }];
  };
  /** A line a little way to both sides of a place. */
  const lineNear = (through: Tried, { name, ends }: Way): readonly Stop[] => {
    const key = `${placeKey(through.place)}|${name}`;
    if (done.has(key)) return [];
    done.add(key);
    const stop = (to: Way['ends'][0]): Stop => {
      const last = to.reduce<RangePlace>((at, [axis, end]) => atEnd(at, axis, end, bodies), through.place);
      const way = wayTo(last, through.place);
      return way === 0
        ? through
        : { place: mixed(through.place, last, Math.min(1, piece / way)), corner: through.corner };
    };
    return [stop(ends[0]), through, stop(ends[1])];
  };
  function* every(lines: Iterable<readonly Stop[]>): Generator<void, readonly Line[]> {
    const end = places.length + mostEnds;
    const found: Line[] = [];
    for (const line of lines) {
      if (places.length >= end) break;
      found.push(...(yield* stops(line, end)));
    }
    return found;
  }
  function* along(lines: readonly Line[], limit: number): Generator<void, void> {
    let open = lines;
    for (let depth = 0; depth < deepest && open.length > 0; depth++) {
      const next: Line[] = [];
      for (const [from, to] of open) {
        const differing = differ(from.signs, to.signs, depth);
        if (!differing.any) continue;
        if (places.length >= limit) return;
        const middle = yield* tried(mixed(from.place, to.place, 0.5), from.corner, differing.losses);
        inherit(middle.signs, from.signs, differing.losses);
        next.push([from, middle], [middle, to]);
        yield;
      }
      open = next;
    }
  }
  const first = corners.length > few ? worstSoFar() : [...byIndex];
  const edges = yield* every(
    eachOf(axes, function* (axis) {
      for (const c of first) yield lineThrough(c, axis);
    }),
  );
  yield* along(edges, places.length + most.edges);
  const last = places.length + most.near;
  for (let turn = 0; turn < turns && places.length < last; turn++) {
    const from = worstSoFar();
    const lines = yield* every(
      eachOf(from, function* (t) {
        for (const axis of axes) yield lineThrough(t, axis);
        for (const way of ways) yield lineNear(t, way);
      }),
    );
    if (lines.length === 0) break;
    yield* along(lines, last);
  }
  return places;
}

/** One after the other as they are asked for, so that what is not asked for is not worked out. */
function* eachOf<Item, Out>(items: readonly Item[], make: (item: Item) => Iterable<Out>): Generator<Out> {
  for (const item of items) yield* make(item);
}

/** A way to go from a place, and back: toward one end of each of some ranges, or toward the other. */
interface Way {
  readonly name: string;
  readonly ends: readonly [Ends, Ends];
}
type Ends = readonly (readonly [RangeAxis, 'low' | 'high'])[];

/** Along each range, and aslant between each two of one vehicle: what falls on one side falls aslant. */
function waysOf(axes: readonly RangeAxis[]): readonly Way[] {
  const name = (a: RangeAxis) => `${a.vehicle}|${a.digit}`;
  const straight = axes.map((a): Way => ({ name: name(a), ends: [[[a, 'low']], [[a, 'high']]] }));
  const aslant = axes.flatMap((a, i) =>
    axes
      .slice(i + 1)
      .filter((b) => b.vehicle === a.vehicle)
      .flatMap((b) =>
        (['low', 'high'] as const).map(
          (end): Way => ({
            name: `${name(a)} ${name(b)} ${end}`,
            ends: [
              [
                [a, 'low'],
                [b, end],
              ],
              [
                [a, 'high'],
                [b, end === 'low' ? 'high' : 'low'],
              ],
            ],
          }),
        ),
      ),
  );
  return [...straight, ...aslant];
}

/** In which cases other contacts push at one place than at the other. */
function differ(
  a: CaseSigns,
  b: CaseSigns,
  depth: number,
): { readonly any: boolean; readonly losses: WantedLosses } {
  const other = (one: number | undefined, two: number | undefined): boolean =>
    one === unlike && two === unlike ? depth < blind : one !== two;
  const losses: WantedLosses = (stage, loss) => other(a.losses[stage]?.[loss], b.losses[stage]?.[loss]);
  const any =
    a.asBuilt.some((s, i) => other(s, b.asBuilt[i])) ||
    a.losses.some((list, stage) => list.some((_, loss) => losses(stage, loss)));
  return { any, losses };
}

/** What is alike at both ends of a line is alike between them. */
function inherit(signs: CaseSigns, from: CaseSigns, tried: WantedLosses): void {
  signs.losses.forEach((list, stage) => {
    for (const loss of list.keys())
      if (!tried(stage, loss)) list[loss] = from.losses[stage]?.[loss] ?? unlike;
  });
}
