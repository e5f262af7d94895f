import type { PlacedCrib } from '@cribwright/model';
import { block, type Solid } from '../scene/solid.js';
import { at3 } from '../scene/vector.js';

/** A crib in space: its timbers, and its wedges where they close the gap. */
export function cribSolids(placed: PlacedCrib): readonly Solid[] {
  const { crib, courses } = placed;
  const { timber, at } = crib;
  const ground = baseHeight(placed);
  const half = timber.length / 2;
  const timbers = courses.flatMap((course) =>
    course.offsets.map((offset, i) => {
      const [dx, dy] = course.runs === 'lengthwise' ? [half, timber.width / 2] : [timber.width / 2, half];
      const [cx, cy] = course.runs === 'lengthwise' ? [at.x, at.y + offset] : [at.x + offset, at.y];
      const bottom = ground + course.bottom;
      return block(
        `course ${course.number} timber ${i + 1}`,
        'timber',
        at3(cx - dx, cy - dy, bottom),
        at3(cx + dx, cy + dy, bottom + timber.depth),
      );
    }),
  );
  return [...timbers, ...wedges(placed, ground)];
}

/** Where its base is drawn, m over the ground: at the low end of a range; on the ground where it is not known. */
export const baseHeight = ({ base }: PlacedCrib): number => base?.low ?? 0;

/** Wedges over the contacts, as thick as the gap that they close. */
function wedges(
  { crib, contacts, heightWithShims, heightWithWedges }: PlacedCrib,
  ground: number,
): readonly Solid[] {
  if (heightWithWedges === undefined || heightWithWedges.low <= heightWithShims) return [];
  const half = crib.timber.width / 2;
  return contacts.map(({ x, y, number }) =>
    block(
      `wedge ${number}`,
      'wedge',
      at3(x - half, y - half, ground + heightWithShims),
      at3(x + half, y + half, ground + heightWithWedges.low),
    ),
  );
}
