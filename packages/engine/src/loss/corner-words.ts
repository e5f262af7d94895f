import type { Component, JointCorner } from './components.js';
import { cornerPlace, placeWords, type RangePlace } from './range-place.js';

interface Bodies {
  readonly component: Component;
}

/** The corner of the ranges in words: `trailer heaviest, center farthest to its front`. */
export const cornerWords = (part: Bodies, corner: JointCorner): string =>
  rangeWords(part, cornerPlace(corner, part.component.bodies));

/** The same for any place in the ranges. */
export const rangeWords = ({ component }: Bodies, place: RangePlace): string =>
  component.bodies
    .flatMap((b, i) => {
      const words = placeWords(b, place[i]);
      return words === '' ? [] : [`${b.name} ${words}`];
    })
    .join('; ');
