import { computed, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { over } from '../figure/interval-math.js';
import { length } from '../figure/units-of.js';
import { exactly } from '../model/interval.js';
import type { Workings } from '../workings/workings.js';
import { cribUse } from './crib-use.js';
import type { CribWorking } from './crib-working.js';
import { crossingStiffness } from './stiffness.js';

/** How far the crib squeezes down under its most loaded contact. `undefined` where no contact is loaded. */
export function crushing(c: CribWorking, w: Workings): Figure | undefined {
  const { crib } = c;
  const loads = cribUse(c, w).contacts.flatMap((u) => (u === undefined ? [] : [u.load]));
  const load = loads.reduce<Figure | undefined>(
    (most, next) => ((next.value?.high ?? -1) > (most?.value?.high ?? -1) ? next : most),
    loads[0],
  );
  if (load === undefined) return undefined;
  const k = crossingStiffness(crib.timber, crib.courses);
  const stiffness = measured(
    {
      key: 'stiffness',
      label: 'stiffness of a contact',
      dimension: 'stiffness',
      unit: w.plan.display === 'us' ? 'lb/in' : 'kN/m',
      rounding: 'down',
      assumes: ['timber squeezes perpendicular to grain alone, all courses in series'],
    },
    exactly(k),
    'modulus perpendicular to grain × crossing ÷ height of the courses',
  );
  return computed(
    length(w.plan.display, 'crushing', 'squeezes down by', 'up', { governs: load.governs }),
    over(load.value, stiffness.value),
    '{load} ÷ {stiffness}',
    { load, stiffness },
  );
}
