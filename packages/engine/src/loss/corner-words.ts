import { type List, list, message } from '@cribwright/messages';
import type { Component, JointCorner } from './components.js';
import { cornerPlace, placeWords, type RangePlace } from './range-place.js';

interface Bodies {
  readonly component: Component;
}

/** The corner of the ranges: `trailer heaviest, center farthest to its front`. `undefined` where nothing is a range. */
export const cornerWords = (part: Bodies, corner: JointCorner): List | undefined =>
  rangeWords(part, cornerPlace(corner, part.component.bodies));

/** The same for any place in the ranges. */
export function rangeWords({ component }: Bodies, place: RangePlace): List | undefined {
  const bodies = component.bodies.flatMap((b, i) => {
    const ends = placeWords(b, place[i]);
    return ends.length === 0 ? [] : [message('range.body', { body: b.name, ends: list(ends, 'plain') })];
  });
  return bodies.length === 0 ? undefined : list(bodies, 'groups');
}
