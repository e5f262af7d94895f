import { type Analysis, analyze, type LoadCase, type Plan, type Reaction, toPlan } from '@cribwright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyPlan, oddPlans } from './any-plan.js';
import { mirror } from './mirror.js';

/** Paths to every number that is not finite, and to what JSON would lose. */
function unsound(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value === 'string')
    return /NaN|undefined|Infinity|\[object/.test(value) ? [`${path}: ${value}`] : [];
  if (value === null || typeof value !== 'object')
    return typeof value === 'function' ? [`${path}: function`] : [];
  return Object.entries(value).flatMap(([key, part]) => unsound(part, `${path}/${key}`));
}

/** What must hold of every analysis, whatever the plan. */
function expectSound(plan: Plan, analysis: Analysis): void {
  expect(unsound(analysis)).toEqual([]);
  expect(analysis.findings.filter((f) => f.message.id === 'rule.could-not-run').map((f) => f.rule)).toEqual(
    [],
  );
  expect(analysis.bodies).toHaveLength(plan.vehicles.length);
  for (const figure of analysis.supports.flatMap((s) => Object.values(s.figures))) {
    if (figure.value !== undefined) expect(figure.value.low).toBeLessThanOrEqual(figure.value.high);
  }
  for (const reaction of analysis.stages.flatMap(cases).flatMap((c) => c.reactions)) {
    expect(reaction.load.low, reaction.id).toBeGreaterThanOrEqual(0);
    expect(reaction.load.low).toBeLessThanOrEqual(reaction.load.high);
  }
}

const cases = (stage: Analysis['stages'][number]): readonly LoadCase[] => [stage.asBuilt, ...stage.losses];

const push = true;

/** Shrinking a plan runs it hundreds of times over: the first failing one is telling enough. */
const settings = { endOnFailure: true } as const;
/** ms; a thousand plans take a while. */
const patience = 240_000;

describe('a thousand random plans', () => {
  it(
    'never crash the analysis, and never give a number that is none',
    () => {
      fc.assert(
        fc.property(anyPlan, (plan) => expectSound(plan, analyze(plan))),
        { ...settings, numRuns: 1000 },
      );
    },
    patience,
  );
  it(
    'nor with the push worked out',
    () => {
      fc.assert(
        fc.property(anyPlan, (plan) => expectSound(plan, analyze(plan, { push, today: '2026-06-01' }))),
        { ...settings, numRuns: 60 },
      );
    },
    patience,
  );
  it.each(Object.entries(oddPlans))('%s', (_, plan) => {
    expectSound(plan, analyze(plan, { push }));
  });
});

/** The same plan with every weight and place at its high end, so that loads are single numbers. */
const exact = (plan: Plan): Plan => {
  const end = (i: { readonly low: number; readonly high: number }) => ({ low: i.high, high: i.high });
  return {
    ...plan,
    vehicles: plan.vehicles.map((v) => ({
      ...v,
      ...(v.statedWeight === undefined ? {} : { statedWeight: end(v.statedWeight) }),
      axles: v.axles.map((a) => ({ ...a, emptyLoad: end(a.emptyLoad) })),
      parts: v.parts.map((p) =>
        p.carries?.emptyLoad === undefined
          ? p
          : { ...p, carries: { ...p.carries, emptyLoad: end(p.carries.emptyLoad) } },
      ),
      cargo: v.cargo.map((c) => ({
        ...c,
        weight: end(c.weight),
        centre: end(c.centre ?? { low: c.from, high: (c.from + c.to) / 2 }),
        offset: end(c.offset),
        height: c.height === undefined ? undefined : end(c.height),
      })),
      emptyCentreHeight: v.emptyCentreHeight === undefined ? undefined : end(v.emptyCentreHeight),
      ...(v.cab === undefined
        ? {}
        : {
            cab: { ...v.cab, weight: end(v.cab.weight), centre: { ...v.cab.centre, x: end(v.cab.centre.x) } },
          }),
    })),
    workingLoads: [],
  };
};

const restingPlan = anyPlan.map(exact);

/** What one body feels from below, less what it feels from above, over its weight. */
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

describe('what rests', () => {
  it(
    'carries the weight: forces and moments balance to 1e-9',
    () => {
      let rested = 0;
      fc.assert(
        fc.property(restingPlan, (plan) => {
          const analysis = analyze(plan);
          // Of the weight of everything, and of the longest lever that a plan has.
          const all = analysis.bodies.reduce((sum, b) => sum + (b.weight.value?.high ?? 0), 0);
          const reach = 1e-9 * 30;
          for (const stage of analysis.stages) {
            for (const one of cases(stage).filter((c) => c.rests)) {
              for (const body of analysis.bodies) {
                const vehicle = plan.vehicles.find((v) => v.id === body.vehicle);
                const weight = body.weight.value?.high;
                if (weight === undefined || weight <= 0 || vehicle === undefined || vehicle.cab !== undefined)
                  continue;
                rested++;
                const found = balance(one.reactions, body.vehicle);
                const where = `${stage.title}, ${one.title}`;
                expect(Math.abs(found.force - weight) / all, where).toBeLessThan(1e-9);
                const [x, y] = [body.centre.x.value?.high, body.centre.y.value?.high];
                if (vehicle.posture.kind !== 'upright' || x === undefined || y === undefined) continue;
                const centre = toPlan(vehicle, { x, y });
                expect(Math.abs(found.momentX - weight * centre.x) / all, where).toBeLessThan(reach);
                expect(Math.abs(found.momentY - weight * centre.y) / all, where).toBeLessThan(reach);
              }
            }
          }
        }),
        { ...settings, numRuns: 150 },
      );
      expect(rested).toBeGreaterThan(100);
    },
    patience,
  );

  it(
    'carries in the mirror what it carries here',
    () => {
      fc.assert(
        fc.property(restingPlan, (plan) => {
          const here = analyze(plan);
          const there = analyze(mirror(plan));
          expect(there.stages.map((s) => s.asBuilt.rests)).toEqual(here.stages.map((s) => s.asBuilt.rests));
          here.stages.forEach((stage, i) => {
            const total = stage.asBuilt.reactions.reduce((sum, r) => sum + r.load.high, 0) || 1;
            const image = [...(there.stages[i]?.asBuilt.reactions ?? [])];
            for (const r of stage.asBuilt.reactions) {
              const match = image.find(
                (m) =>
                  m.element === r.element &&
                  m.upper === r.upper &&
                  Math.abs(m.at.x - r.at.x) < 1e-6 &&
                  Math.abs(m.at.y + r.at.y) < 1e-6,
              );
              expect(match, r.id).toBeDefined();
              expect(Math.abs((match?.load.high ?? Number.NaN) - r.load.high) / total).toBeLessThan(1e-6);
            }
          });
          const rules = (a: Analysis) => a.findings.map((f) => `${f.rule} ${f.subject.element}`).sort();
          expect(rules(there)).toEqual(rules(here));
        }),
        { ...settings, numRuns: 60 },
      );
    },
    patience,
  );
});

it(
  'finds the same in either system of units',
  () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const numbers = (display: Plan['display']) => {
          const a = analyze({ ...plan, display });
          return {
            findings: a.findings.map((f) => `${f.rule} ${f.subject.element} ${f.severity}`),
            supports: a.supports.map((s) => Object.entries(s.figures).map(([k, f]) => [k, f.value])),
            stages: a.stages.map((s) => s.asBuilt.reactions.map((r) => r.load)),
          };
        };
        expect(numbers('si')).toEqual(numbers('us'));
      }),
      { ...settings, numRuns: 60 },
    );
  },
  patience,
);

/** Every weight times `by`; places stay. */
const heavier = (plan: Plan, by: number): Plan => {
  const more = (i: { readonly low: number; readonly high: number }) => ({
    low: i.low * by,
    high: i.high * by,
  });
  return {
    ...plan,
    vehicles: plan.vehicles.map((v) => ({
      ...v,
      ...(v.statedWeight === undefined ? {} : { statedWeight: more(v.statedWeight) }),
      axles: v.axles.map((a) => ({ ...a, emptyLoad: more(a.emptyLoad) })),
      parts: v.parts.map((p) =>
        p.carries?.emptyLoad === undefined
          ? p
          : { ...p, carries: { ...p.carries, emptyLoad: more(p.carries.emptyLoad) } },
      ),
      cargo: v.cargo.map((c) => ({ ...c, weight: more(c.weight) })),
      ...(v.cab === undefined ? {} : { cab: { ...v.cab, weight: more(v.cab.weight) } }),
    })),
  };
};

it(
  'never gains a margin by weight: every use of capacity grows or stays',
  () => {
    let compared = 0;
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 1, max: 3, noNaN: true }), (plan, by) => {
        // Wedges driven in beforehand take off a load that does not grow with the weight.
        const snug = {
          ...plan,
          workingLoads: [],
          cribs: plan.cribs.map((c) => ({
            ...c,
            wedges: c.wedges === undefined ? undefined : { ...c.wedges, preload: 0 },
          })),
          struts: plan.struts.map((s) => ({ ...s, preload: 0 })),
        };
        const uses = (p: Plan) =>
          new Map(
            analyze(p).supports.flatMap((s) => {
              const use = s.figures.use?.value;
              return use === undefined ? [] : [[s.id, use.high] as const];
            }),
          );
        const [light, heavy] = [uses(snug), uses(heavier(snug, by))];
        for (const [id, use] of light) {
          compared++;
          expect(heavy.get(id) ?? Number.NaN, id).toBeGreaterThanOrEqual(use * (1 - 1e-6) - 1e-12);
        }
      }),
      { ...settings, numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(10);
  },
  patience,
);
