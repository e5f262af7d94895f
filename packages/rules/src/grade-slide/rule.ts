import type { Workings } from '@cribwright/engine';
import type { ComponentRun, PlanBody } from '@cribwright/engine/internal';
import { at, downGrade, gradeFigure, holds, pushContact } from '@cribwright/engine/internal';
import type { Figure } from '@cribwright/messages';
import { calculation, message, shown, shownBeside, term } from '@cribwright/messages';
import { computed, exactly, given, measured, type Vehicle } from '@cribwright/model';
import { force, ratio, share } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { fromMemory, practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

/**
 * Share of the load on an axle that its parking brake holds. 49 CFR 571.121, S5.6.1, from memory: a static retardation
 * force of at least 0.28 of the axle's rating at each axle but a steerable front one.
 */
const BRAKE_HOLDS = 0.28;

/** Whether brakes that the plan states as set act on an axle. No parking brake is counted at the foremost one. */
function braked(vehicle: Vehicle | undefined, group: string): boolean {
  if (vehicle?.brakesSet !== true) return false;
  const foremost = Math.min(...vehicle.axles.map((a) => a.x));
  return vehicle.axles.some((a) => a.x > foremost && group === `${vehicle.id}/${a.id}`);
}

/** Friction of what cannot roll downhill, with as little on it as the ranges allow. Snug cribs carry nothing yet. */
function holdOf(w: Workings, part: ComponentRun, body: PlanBody): Figure {
  const run = part.stages.at(-1)?.asBuilt;
  const standing = w.resting().stages.at(-1)?.standing ?? [];
  const down = downGrade(w.plan.ground);
  const friction = given(
    ratio('friction', term('figure.friction-of-its-tires'), 'down', { ref: w.plan.ground.surface.ref }),
    exactly(w.plan.ground.surface.frictionTire.low),
    w.plan.ground.surface.frictionSource,
  );
  let least = 0;
  let onBrakes = 0;
  const vehicle = w.vehicles.get(body.vehicle);
  part.component.points.forEach((p, i) => {
    if (run?.there[i] !== true || p.upper !== body.id || p.kind !== 'tire') return;
    const { rolls } = pushContact(p, standing, w);
    const along = rolls === undefined ? 0 : down.x * rolls.along.x + down.y * rolls.along.y;
    const rollsAway =
      rolls !== undefined && Math.abs(along) > 0.5 && !(along > 0 ? rolls.heldForward : rolls.heldBack);
    if (!rollsAway) least += at(run.low, i);
    else if (braked(vehicle, p.group)) onBrakes += at(run.low, i);
  });
  const pressed = measured(
    force('pressed', term('figure.least-load-on-wheels-that-cannot-roll'), 'down'),
    exactly(least),
    term('figure.sum-of-the-least-that-each-of'),
  );
  const tires = least * (friction.value?.low ?? 0);
  const head = force('hold', term('figure.friction-that-holds-it'), 'down');
  if (onBrakes === 0) return computed(head, exactly(tires), '{friction} × {pressed}', { friction, pressed });
  const brake = given(
    ratio('brake', term('grade-slide.brake-share'), 'down', {
      ref: { element: body.vehicle, property: 'brakes' },
    }),
    exactly(Math.min(BRAKE_HOLDS, friction.value?.low ?? 0)),
    fromMemory('49 CFR 571.121, S5.6.1'),
  );
  const pressedOnBrakes = measured(
    force('onBrakes', term('grade-slide.load-on-brakes'), 'down'),
    exactly(onBrakes),
    term('figure.sum-of-the-least-that-each-of'),
  );
  return computed(
    head,
    exactly(tires + onBrakes * (brake.value?.low ?? 0)),
    '{friction} × {pressed} + {brake} × {onBrakes}',
    { friction, pressed, brake, onBrakes: pressedOnBrakes },
  );
}

function judge(w: Workings, part: ComponentRun, body: PlanBody): RuleFinding | undefined {
  const { ground } = w.plan;
  if (!w.plan.chocks.some((c) => c.vehicle === body.vehicle)) return undefined;
  const grade = gradeFigure(ground);
  const weight = measured(
    force('weight', term('figure.weight'), 'up', { governs: term('figure.the-heavy-end') }),
    exactly(Math.max(...body.corners.map((c) => c.weight))),
    term('figure.empty-vehicle-cargo-at-its-heaviest'),
  );
  const demand = computed(
    force('demand', term('figure.pull-downhill'), 'up', { governs: term('figure.the-heavy-end') }),
    exactly((weight.value?.high ?? 0) * Math.sin(Math.atan(Math.abs(ground.grade)))),
    '{weight} × sin(arctan({grade}))',
    { weight, grade },
  );
  const hold = holdOf(w, part, body);
  if (!exceeds(demand.value?.high ?? 0, hold.value?.low ?? 0)) return undefined;
  const beside = shownBeside(demand, hold);
  return {
    subject: { element: body.vehicle },
    at: ground.ref,
    message: message(
      hold.inputs.some((f) => f.key === 'brake') ? 'grade-slide.slides-braked' : 'grade-slide.slides',
      {
        grade: shown(grade),
        vehicle: body.name,
        demand: beside.demand,
        sum: calculation(demand),
        capacity: beside.limit,
        hold: calculation(hold),
      },
    ),
    figures: [demand, hold],
    related: [
      { at: { element: body.vehicle }, message: message('grade-slide.grade-here', { grade: shown(grade) }) },
    ],
    governs: term('figure.the-heavy-end'),
  };
}

/** An unknown grade is not a level one. */
function unsaid({ plan }: Workings): readonly RuleFinding[] {
  const { unsaid, grade, ref } = plan.ground;
  if (unsaid === undefined || plan.vehicles.length === 0) return [];
  const stated = given(
    share('grade', term('figure.grade'), 'up', { ref }),
    unsaid === 'grade' ? undefined : exactly(grade),
    { kind: 'stated' },
  );
  return [
    {
      subject: ref,
      at: ref,
      severity: 'warning',
      couldNotRun: true,
      message:
        unsaid === 'grade'
          ? term('grade-slide.grade-unsaid')
          : message('grade-slide.direction-unsaid', { grade: shown(stated) }),
      figures: [stated],
    },
  ];
}

export const rule: Rule = {
  id: 'grade-slide',
  title: term('grade-slide.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('grade-slide.protects'),
  sources: [
    practice,
    published('OpenStax University Physics, volume 1', 'section 6.2: the incline, W sin θ against μ N'),
    fromMemory('49 CFR 571.121, S5.6.1: parking brakes'),
  ],
  compares: ['weight × sin(grade)', 'friction × load on held wheels + 0.28 × load on braked wheels'],
  check: (w) => [
    ...unsaid(w),
    ...(w.plan.ground.grade === 0
      ? []
      : w.resting().parts.flatMap((part) => {
          const last = part.stages.at(-1)?.asBuilt;
          if (last === undefined || !holds(last)) return [];
          return part.component.bodies
            .filter((b) => b.id === b.vehicle)
            .flatMap((body) => judge(w, part, body) ?? []);
        })),
  ],
};
