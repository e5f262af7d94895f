import { around, type Box, join } from '../scene/bounds.js';
import type { Solid } from '../scene/solid.js';
import { middle, type Point3 } from '../scene/vector.js';
import { type Looking, pointsOf, reachOf } from './project.js';
import type { Thing } from './thing.js';

/** Answers that hang on the thing alone, worked out once for each. */
const once = <Answer>(work: (thing: Thing) => Answer): ((thing: Thing) => Answer) => {
  const known = new WeakMap<Thing, { readonly answer: Answer }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.answer;
    const answer = work(thing);
    known.set(thing, { answer });
    return answer;
  };
};

/** The same for each way of looking. */
const onceEachWay = <Answer>(
  work: (thing: Thing, looking: Looking) => Answer,
): ((thing: Thing, looking: Looking) => Answer) => {
  const ways = new WeakMap<Looking, (thing: Thing) => Answer>();
  return (thing, looking) => {
    const own = ways.get(looking) ?? once((t) => work(t, looking));
    ways.set(looking, own);
    return own(thing);
  };
};

/** The middle of all corners of a thing. */
export const middleOf = once((thing) => middle(thing.solids.flatMap(pointsOf)));

/** How near to the eye the middle of its nearest piece is. */
export const nearestPiece = onceEachWay((thing, looking) =>
  Math.max(...thing.solids.map((solid) => nearnessOf(solid, looking))),
);

export const nearnessOf = (solid: Solid, looking: Looking): number => looking.near(middle(pointsOf(solid)));

const thick = onceEachWay((thing, looking) => reachOf(thing.solids, looking));
const bare = onceEachWay((thing, looking) => reachOf(thing.solids, looking, [], 'bare'));

/** The room that things and places besides take, seen one way, m. */
export function reachOfThings(
  things: readonly Thing[],
  looking: Looking,
  besides: readonly Point3[] = [],
  rods: 'thick' | 'bare' = 'thick',
): Box {
  const reach = rods === 'thick' ? thick : bare;
  return things.map((t) => reach(t, looking)).reduce(join, around(besides.map(looking.flat)));
}
