import type { Plan } from '@cribwright/model';
import { crib, samplePlans } from '@cribwright/model/testing';
import { foot, inch } from '@cribwright/units';

const rows = [-42, -14, 14, 42].map((inches) => inches * inch);
const columns = 26;

/**
 * A plan far larger than anybody builds: rows of cribs under one trailer, about 2,000 shapes seen from above.
 * `aside` moves one crib in the middle, m.
 */
export function largePlan(aside = 0): Plan {
  const { trailerOnCar } = samplePlans;
  if (trailerOnCar === undefined) throw new Error('The sample plan is gone.');
  const cribs = Array.from({ length: columns }, (_, column) =>
    rows.map((y, row) => {
      const moved = column === columns / 2 && row === 0 ? aside : 0;
      return crib(`N${column * rows.length + row}`, (3 + 2 * column) * foot, y - moved);
    }),
  );
  return { ...trailerOnCar, title: 'Very many cribs', cribs: cribs.flat() };
}
