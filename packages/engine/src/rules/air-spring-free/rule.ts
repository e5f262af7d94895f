import { messages } from '../../finding/message.js';
import type { Vehicle } from '../../model/vehicle.js';
import { cabBody } from '../../workings/support-points.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'on-air':
    'The cab of the {vehicle} still rides on its {mounts}. It moves while tools work, and drops if the air goes. Build a crib between cab and frame, or set struts under the cab, so that it rests on timber and not on air.',
} as const;
const say = messages('air-spring-free', words);

function judge(vehicle: Vehicle, w: Workings): RuleFinding | undefined {
  const air = vehicle.cab?.mounts.filter((m) => m.spring === 'air') ?? [];
  if (air.length === 0) return undefined;
  const body = cabBody(vehicle);
  const { parts } = w.resting();
  const part = parts.find((p) => p.component.bodies.some((b) => b.id === body));
  const last = part?.stages.at(-1)?.asBuilt;
  const held = part?.component.points.some(
    (p, i) => !p.original && p.upper === body && last?.there[i] === true,
  );
  if (held === true) return undefined;
  const ref = vehicle.cab?.ref ?? { element: vehicle.id };
  return {
    subject: { element: vehicle.id },
    at: ref,
    message: say('on-air', { vehicle: vehicle.name, mounts: air.map((m) => m.name).join(' and ') }),
  };
}

export const rule: Rule = {
  id: 'air-spring-free',
  title: 'Cab left on its air springs',
  family: 'whole set-up',
  severity: 'danger',
  protects: 'A cab on air springs sways under tools and drops when a line is cut.',
  sources: [practice],
  compares: ['supports under the cab'],
  words,
  check: (w) => w.plan.vehicles.flatMap((v) => judge(v, w) ?? []),
};
