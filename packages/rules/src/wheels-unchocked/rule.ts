import type { Fix, Workings } from '@cribwright/engine';
import { chockInSteps, freeName, gradeFigure } from '@cribwright/engine/internal';
import { message, name, shown, term } from '@cribwright/messages';
import type { ElementId, Vehicle } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

const isUpper = (v: Vehicle, w: Workings) => w.plan.contacts.some((c) => c.upper === v.id && !c.coupled);

/** A vehicle and all that are coupled to it: the chocks of one keep them all. */
function coupledWith(vehicle: ElementId, w: Workings): ReadonlySet<ElementId> {
  const together = new Set([vehicle]);
  for (let before = 0; before !== together.size; ) {
    before = together.size;
    for (const c of w.plan.contacts.filter((k) => k.coupled)) {
      if (together.has(c.lower)) together.add(c.upper);
      if (together.has(c.upper)) together.add(c.lower);
    }
  }
  return together;
}

function unchocked(vehicle: Vehicle, w: Workings): RuleFinding | undefined {
  if (vehicle.position.kind === 'on its side' || vehicle.position.kind === 'on its roof') return undefined;
  if (!vehicle.axles.some((a) => a.missing.length < 2)) return undefined;
  const together = coupledWith(vehicle.id, w);
  const chocks = w.plan.chocks.filter((c) => together.has(c.vehicle));
  const forward = chocks.some((c) => c.ways !== 'rearward');
  const rearward = chocks.some((c) => c.ways !== 'forward');
  if (forward && rearward) return undefined;
  const grade = gradeFigure(w.plan.ground);
  const limit = w.limit('grade needing chocks');
  const steep = Math.abs(w.plan.ground.grade) > (limit.value?.low ?? 0) + 1e-12;
  const missing = !forward && !rearward ? 'either-way' : forward ? 'rearward' : 'forward';
  const one = chocks[0];
  const what = steep
    ? message('wheels-unchocked.on-a-grade', {
        vehicle: name(vehicle.name),
        grade: shown(grade),
        direction: term(`wheels-unchocked.${missing}`),
      })
    : one === undefined
      ? message('wheels-unchocked.none', { vehicle: name(vehicle.name) })
      : message('wheels-unchocked.one-way', {
          vehicle: name(vehicle.name),
          direction: term(forward ? 'wheels-unchocked.forward' : 'wheels-unchocked.rearward'),
        });
  return {
    subject: { element: vehicle.id },
    at: one === undefined ? { element: vehicle.id } : { element: one.id, property: 'holds' },
    severity: steep || isUpper(vehicle, w) ? 'danger' : 'warning',
    message: what,
    figures: [grade, limit],
    related:
      vehicle.brakesSet === false
        ? [{ at: { element: vehicle.id, property: 'brakes' }, message: term('wheels-unchocked.released') }]
        : [],
    fixes: [chockFix(vehicle, w)],
  };
}

function chockFix(vehicle: Vehicle, w: Workings): Fix {
  // Those of a step have no block of their own to change.
  const one = w.plan.chocks.find((c) => c.vehicle === vehicle.id && !c.name.startsWith('step '));
  const inSteps = one === undefined ? chockInSteps(w.plan, vehicle.name) : [];
  return {
    title: message('wheels-unchocked.fix-chock', { vehicle: name(vehicle.name) }),
    edits:
      one !== undefined
        ? [{ kind: 'set', at: { element: one.id, property: 'holds' }, text: 'both directions' }]
        : inSteps.length > 0
          ? inSteps
          : [
              {
                kind: 'insert',
                into: w.plan.ref,
                text: `chock ${freeName('K', w.plan.chocks)} {\n  under ${vehicle.name}\n  holds both directions\n}`,
              },
            ],
    safe: false,
  };
}

export const rule: Rule = {
  id: 'wheels-unchocked',
  title: term('wheels-unchocked.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('wheels-unchocked.protects'),
  sources: [practice],
  compares: ['grade', 'grade needing chocks'],
  check: (w) => w.plan.vehicles.flatMap((v) => unchocked(v, w) ?? []),
};
