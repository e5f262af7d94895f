import type { Workings } from '@cribwright/engine';
import { mirrorFix, sideOf } from '@cribwright/engine/internal';
import { list, message, name, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function oneSided(vehicle: Vehicle, w: Workings): RuleFinding | undefined {
  const struts = w.plan.struts.filter((s) => s.head.vehicle === vehicle.id);
  const on = (side: 'driver' | 'passenger') => struts.filter((s) => sideOf(s, w.vehicles) === side);
  const driver = on('driver');
  const passenger = on('passenger');
  if (driver.length > 0 === passenger.length > 0) return undefined;
  const have = driver.length > 0 ? driver : passenger;
  const first = have[0];
  if (first === undefined) return undefined;
  return {
    subject: { element: vehicle.id },
    at: { element: first.id },
    message: message(driver.length > 0 ? 'strut-one-sided.driver-only' : 'strut-one-sided.passenger-only', {
      vehicle: name(vehicle.name),
      struts: list(
        have.map((s) => name(s.name)),
        'plain',
      ),
    }),
    fixes: mirrorFix(first, w),
  };
}

export const rule: Rule = {
  id: 'strut-one-sided',
  title: term('strut-one-sided.title'),
  family: 'struts and ties',
  severity: 'warning',
  judges: 'plan',
  protects: term('strut-one-sided.protects'),
  sources: [practice],
  compares: [],
  check: (w) => w.plan.vehicles.flatMap((v) => oneSided(v, w) ?? []),
};
