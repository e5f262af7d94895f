import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import { computed, exactly, measured } from '@cribwright/model';
import { length, over } from '@cribwright/model/internal';
import type { CribWorking } from '../crib/crib-working.js';
import { crossingStiffness } from '../crib/stiffness.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import { cribUse } from './crib-use.js';

/** How far the crib squeezes down under its most loaded contact. `undefined` where no contact is loaded. */
export function crushing(c: CribWorking, w: LoadWorkings): Figure | undefined {
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
      label: term('figure.stiffness-of-a-contact'),
      quantity: 'stiffness',
      rounding: 'down',
      assumes: [term('figure.timber-squeezes-perpendicular-to-grain-alone-all')],
    },
    exactly(k),
    term('figure.modulus-perpendicular-to-grain-crossing-height-of'),
  );
  return computed(
    length('crushing', term('figure.squeezes-down-by'), 'up', { governs: load.governs }),
    over(load.value, stiffness.value),
    '{load} ÷ {stiffness}',
    { load, stiffness },
  );
}
