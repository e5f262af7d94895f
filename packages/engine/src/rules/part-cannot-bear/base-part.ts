import { message, name } from '@cribwright/messages';
import type { Crib, StepChock } from '../../model/support.js';
import { partNamed } from '../../placed/part-place.js';
import type { Workings } from '../../workings/workings.js';
import type { RuleFinding } from '../rule.js';

/** A crib or step chock whose base is on a part of a vehicle that may not bear, such as a sheet metal roof. */
export function badBasePart(support: Crib | StepChock, w: Workings): readonly RuleFinding[] {
  const { standsOn } = support;
  if (standsOn.kind !== 'vehicle') return [];
  const vehicle = w.vehicles.get(standsOn.vehicle);
  const part = vehicle && partNamed(vehicle, standsOn.part);
  // A base that is not in the plan has no height: the checks that need it have not passed.
  if (vehicle === undefined || part === undefined || part.mayBear) return [];
  const known = { name: name(support.name) };
  return [
    {
      subject: { element: support.id },
      at: { element: support.id, property: 'stands on' },
      message: message('part-cannot-bear.stands-on', {
        support:
          support.kind === 'crib'
            ? message('part-cannot-bear.crib', known)
            : message('part-cannot-bear.step-chock', known),
        part: name(part.name),
        vehicle: name(vehicle.name),
        remark: name(part.remark ?? ''),
      }),
      related: [{ at: part.ref, message: message('part-cannot-bear.part-here', { part: name(part.name) }) }],
    },
  ];
}
