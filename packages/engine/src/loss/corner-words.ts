import type { JointCorner } from './components.js';
import type { ComponentRun } from './loss-working.js';

/** The corner of the ranges in words: `trailer heaviest, centre farthest to its front`. */
export const cornerWords = (part: ComponentRun, corner: JointCorner): string =>
  part.component.bodies
    .flatMap((b, i) => {
      const words = b.corners[corner[i] ?? 0]?.words ?? '';
      return words === '' ? [] : [`${b.name} ${words}`];
    })
    .join('; ');
