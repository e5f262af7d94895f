import assert from 'node:assert/strict';
import { type Analysis, analyze, type Plan, type Reaction, toPlan } from '@cribwright/engine';
import { samplePlans } from '@cribwright/engine/testing';
import fc from 'fast-check';
import { anyPlan } from './any-plan.js';
import { exact, heavier, snug } from './changed-plans.js';
import { casesOf, faults } from './faults.js';
import { mirror } from './mirror.js';

/**
 * The same plans at every run, so that a failure is found again. Shrinking a plan runs it hundreds of times over:
 * the first failing one is telling enough.
 */
const plans = (numRuns: number, check: (plan: Plan) => void, of: fc.Arbitrary<Plan> = anyPlan): void =>
  fc.assert(
    fc.property(of, (plan) => check(plan)),
    { seed: 77, endOnFailure: true, numRuns },
  );

/** What one body feels from below, less what it feels from above. */
function balance(reactions: readonly Reaction[], body: string) {
  let [force, momentX, momentY] = [0, 0, 0];
  for (const r of reactions) {
    const sign = r.upper === body ? 1 : r.lower === body ? -1 : 0;
    force += sign * r.load.high;
    momentX += sign * r.load.high * r.at.x;
    momentY += sign * r.load.high * r.at.y;
  }
  return { force, momentX, momentY };
}

/** Forces and moments left over, as shares of the weight of everything (and of 30 m), over 1e-9. Returns cases seen. */
function balanced(plan: Plan): number {
  const analysis = analyze(plan);
  const all = analysis.bodies.reduce((sum, b) => sum + (b.weight.value?.high ?? 0), 0);
  let seen = 0;
  for (const stage of analysis.stages) {
    for (const one of casesOf(stage).filter((c) => c.rests)) {
      for (const body of analysis.bodies) {
        const vehicle = plan.vehicles.find((v) => v.id === body.vehicle);
        const weight = body.weight.value?.high ?? 0;
        // A cab on springs of its own is a second body: the two are told apart by their ids elsewhere.
        if (weight <= 0 || vehicle === undefined || vehicle.cab !== undefined) continue;
        seen++;
        const found = balance(one.reactions, body.vehicle);
        const off = [Math.abs(found.force - weight) / all];
        const [x, y] = [body.centre.x.value?.high, body.centre.y.value?.high];
        if (vehicle.posture.kind === 'upright' && x !== undefined && y !== undefined) {
          const centre = toPlan(vehicle, { x, y });
          off.push(Math.abs(found.momentX - weight * centre.x) / all / 30);
          off.push(Math.abs(found.momentY - weight * centre.y) / all / 30);
        }
        assert.ok(
          Math.max(...off) < 1e-9,
          `${body.vehicle}, ${stage.title}, ${one.title}: ${off.join(', ')}`,
        );
      }
    }
  }
  return seen;
}

const rulesOf = (a: Analysis) => a.findings.map((f) => `${f.rule} ${f.subject.element}`).sort();

/** Every reaction has its image, with the same load to a millionth of all. */
function mirrored(plan: Plan): void {
  const [here, there] = [analyze(plan), analyze(mirror(plan))];
  assert.deepEqual(
    there.stages.map((s) => s.asBuilt.rests),
    here.stages.map((s) => s.asBuilt.rests),
  );
  here.stages.forEach((stage, i) => {
    const total = stage.asBuilt.reactions.reduce((sum, r) => sum + r.load.high, 0) || 1;
    for (const r of stage.asBuilt.reactions) {
      const image = there.stages[i]?.asBuilt.reactions.find(
        (m) =>
          m.element === r.element &&
          m.upper === r.upper &&
          Math.abs(m.at.x - r.at.x) < 1e-6 &&
          Math.abs(m.at.y + r.at.y) < 1e-6,
      );
      assert.ok(
        Math.abs((image?.load.high ?? Number.NaN) - r.load.high) / total < 1e-6,
        `${stage.title} ${r.id}`,
      );
    }
  });
  assert.deepEqual(rulesOf(there), rulesOf(here));
}

const numbersIn = (plan: Plan, display: Plan['display']) => {
  const a = analyze({ ...plan, display });
  return {
    findings: a.findings.map((f) => `${f.rule} ${f.subject.element} ${f.severity}`),
    supports: a.supports.map((s) => Object.entries(s.figures).map(([k, f]) => [k, f.value])),
    stages: a.stages.map((s) => s.asBuilt.reactions.map((r) => r.load)),
  };
};

const usesOf = (plan: Plan): ReadonlyMap<string, number> =>
  new Map(
    analyze(plan).supports.flatMap((s) => {
      const use = s.figures.use?.value;
      return use === undefined ? [] : [[s.id, use.high] as const];
    }),
  );

/** Every use of capacity grows or stays. Returns how many were compared. */
function noGain(plan: Plan, by: number): number {
  const [light, heavy] = [usesOf(plan), usesOf(heavier(plan, by))];
  for (const [id, use] of light)
    assert.ok((heavy.get(id) ?? Number.NaN) >= use * (1 - 1e-6) - 1e-12, `${id}: ${use} to ${heavy.get(id)}`);
  return light.size;
}

/** Share of the weight held, in each direction. None where the push could not be worked out. */
const sharesOf = (plan: Plan): readonly number[] =>
  (analyze(plan, { push: true }).push?.directions ?? []).map((d) => d.share.value?.low ?? Number.NaN);

/**
 * No direction holds a greater share of a greater weight: friction grows with the weight, capacities do not. Returns
 * how many shares were above nothing, and how many of those fell.
 */
function noPushGain(plan: Plan, by: number): { readonly held: number; readonly fell: number } {
  const [light, heavy] = [sharesOf(plan), sharesOf(heavier(plan, by))];
  let fell = 0;
  light.forEach((share, i) => {
    const then = heavy[i] ?? Number.NaN;
    assert.ok(then <= share + 1e-6, `${plan.title}, direction ${i}: ${share} to ${then}`);
    if (then < share - 1e-6) fell++;
  });
  return { held: light.filter((share) => share > 0).length, fell };
}

/** What must hold of every plan. Each throws where it does not, and says how much it looked at. */
export const properties: Readonly<Record<string, () => string>> = {
  'a thousand random plans: no crash, no number that is none, no contact that pulls': () => {
    plans(1000, (plan) => assert.deepEqual(faults(plan, analyze(plan)), []));
    return '1000 plans';
  },
  'the same with the push worked out': () => {
    plans(60, (plan) =>
      assert.deepEqual(faults(plan, analyze(plan, { push: true, today: '2026-06-01' })), []),
    );
    return '60 plans';
  },
  'reactions sum to the weight, and moments to zero, to 1e-9': () => {
    let seen = 0;
    plans(
      200,
      (plan) => {
        seen += balanced(plan);
      },
      anyPlan.map(exact),
    );
    assert.ok(seen > 500, `only ${seen} bodies came to rest`);
    return `${seen} bodies at rest`;
  },
  'the mirror image carries the mirror image of the loads': () => {
    plans(150, mirrored, anyPlan.map(exact));
    return '150 plans';
  },
  'units changed, answer unchanged': () => {
    plans(150, (plan) => assert.deepEqual(numbersIn(plan, 'si'), numbersIn(plan, 'us')));
    return '150 plans';
  },
  'adding weight never raises a margin': () => {
    let seen = 0;
    plans(150, (plan) => {
      seen += noGain(snug(plan), 1 + (plan.ground.grade || 0.2) * 5);
    });
    assert.ok(seen > 40, `only ${seen} uses of capacity were compared`);
    return `${seen} uses of capacity`;
  },
  'adding weight never raises the share of it that a push must reach': () => {
    let [held, fell] = [0, 0];
    const look = (plan: Plan, by: number): void => {
      const found = noPushGain(snug(plan), by);
      held += found.held;
      fell += found.fell;
    };
    // Few random plans hold anything that a capacity governs: the samples do.
    for (const plan of Object.values(samplePlans)) for (const by of [2, 5]) look(plan, by);
    assert.ok(fell > 100, `only ${fell} shares of the samples fell`);
    plans(60, (plan) => look(plan, 1 + (plan.ground.grade || 0.2) * 20));
    assert.ok(held > 400, `only ${held} shares of the weight were compared`);
    return `${held} shares of the weight held, ${fell} of them fell`;
  },
};
