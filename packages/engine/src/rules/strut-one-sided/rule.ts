import { messages } from '../../finding/message.js';
import type { Vehicle } from '../../model/vehicle.js';
import { sideOf } from '../../strut/pairs.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'one-side':
    'The {vehicle} has struts on its {side} side ({struts}) and none on the other. What is done on one side is answered on the other: set struts on the {other} side too.',
} as const;
const say = messages('strut-one-sided', words);

function oneSided(vehicle: Vehicle, w: Workings): RuleFinding | undefined {
  const struts = w.plan.struts.filter((s) => s.head.vehicle === vehicle.id);
  const on = (side: 'driver' | 'passenger') => struts.filter((s) => sideOf(s, w.vehicles) === side);
  const driver = on('driver');
  const passenger = on('passenger');
  if (driver.length > 0 === passenger.length > 0) return undefined;
  const [side, other, have] =
    driver.length > 0
      ? (['driver', 'passenger', driver] as const)
      : (['passenger', 'driver', passenger] as const);
  const first = have[0];
  if (first === undefined) return undefined;
  return {
    subject: { element: vehicle.id },
    at: { element: first.id },
    message: say('one-side', {
      vehicle: vehicle.name,
      side,
      other,
      struts: have.map((s) => s.name).join(', '),
    }),
  };
}

export const rule: Rule = {
  id: 'strut-one-sided',
  title: 'Struts on one side only',
  family: 'struts and ties',
  severity: 'warning',
  protects: 'Struts on one side push a vehicle over to the other.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => w.plan.vehicles.flatMap((v) => oneSided(v, w) ?? []),
};
