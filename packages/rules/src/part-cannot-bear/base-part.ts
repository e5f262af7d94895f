import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { message, name } from '@cribwright/messages';
import type { Crib, StepChock } from '@cribwright/model';
import { partNamed } from '@cribwright/model';
import type { RuleFinding } from '../definition/rule.js';

/** A crib or step chock whose base is on a part of a vehicle that may not bear, such as a sheet metal roof. */
export function badBasePart(support: Crib | StepChock, w: Workings): readonly RuleFinding[] {
  const { standsOn } = support;
  if (standsOn.kind !== 'vehicle') return [];
  const vehicle = w.vehicles.get(standsOn.vehicle);
  const part = vehicle && partNamed(vehicle, standsOn.part);
  // A base that is not in the plan has no height: the checks that need it have not passed.
  if (vehicle === undefined || part === undefined || part.mayBear) return [];
  return [
    {
      subject: { element: support.id },
      at: { element: support.id, property: 'stands on' },
      message: message('part-cannot-bear.stands-on', {
        support: elementMessage(w.plan, support.id),
        part: name(part.name),
        vehicle: name(vehicle.name),
        ...(part.remark === undefined ? {} : { remark: name(part.remark) }),
      }),
      related: [{ at: part.ref, message: message('part-cannot-bear.part-here', { part: name(part.name) }) }],
    },
  ];
}
