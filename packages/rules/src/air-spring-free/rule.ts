import type { Workings } from '@cribwright/engine';
import { cabBody } from '@cribwright/engine/internal';
import { list, message, name, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

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
    message: message('air-spring-free.on-air', {
      vehicle: name(vehicle.name),
      mounts: list(air.map((m) => name(m.name))),
    }),
  };
}

export const rule: Rule = {
  id: 'air-spring-free',
  title: term('air-spring-free.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('air-spring-free.protects'),
  sources: [practice],
  compares: ['supports under the cab'],
  check: (w) => w.plan.vehicles.flatMap((v) => judge(v, w) ?? []),
};
