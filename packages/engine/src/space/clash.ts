import type { Extent } from '@cribwright/model';
import { inch } from '@cribwright/units';
import { overlap } from './polygon.js';

/** How deep two things run into each other seen from above, m; zero where one is clear of the other, or above it. */
export const clash = (a: Extent, b: Extent): number =>
  Math.min(a.high, b.high) - Math.max(a.low, b.low) > inch / 4 ? overlap(a.outline, b.outline) : 0;
