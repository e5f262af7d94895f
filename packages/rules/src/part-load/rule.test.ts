import { workingsOf } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import type { Part, Plan, Vehicle } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import {
  crib,
  foot,
  gripping,
  inch,
  lb,
  planOf,
  policyWith,
  sedan,
  step,
  strut,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { rule as cribLoad } from '../crib-load/rule.js';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const withPart = (vehicle: Vehicle, id: string, change: Partial<Part>): Vehicle => ({
  ...vehicle,
  parts: vehicle.parts.map((p) => (p.id === id ? { ...p, ...change } : p)),
});

/** The trailer without wheels, its load centered: a crib under each rail carries half of what the kingpin does not. */
const onCribs = (pounds: number, change: Partial<Record<'rail' | 'joists', Partial<Part>>> = {}): Plan => {
  const bare = {
    ...vanTrailer,
    axles: vanTrailer.axles.map((a) => ({ ...a, missing: ['driver', 'passenger'] as const })),
    cargo: vanTrailer.cargo.map((c) => ({
      ...c,
      weight: exactly(pounds * lb),
      center: exactly(30 * foot),
      offset: exactly(0),
    })),
  };
  return planOf({
    vehicles: [withPart(withPart(bare, 'rail', change.rail ?? {}), 'joists', change.joists ?? {})],
    cribs: [-1, 1].map((side) => crib(side < 0 ? 'A' : 'B', 36.5 * foot, side * 42.75 * inch)),
  });
};
const idsOf = (plan: Plan) => check(rule, plan).map((f) => f.message.id);

describe('part-load, against the rating of a part', () => {
  it('passes parts without a rating, and one that carries less than its rating', () => {
    expect(check(rule, onCribs(10_000))).toEqual([]);
    expect(check(rule, onCribs(10_000, { rail: { rating: 40_000 * lb } }))).toEqual([]);
  });

  // A crib takes thousands of pounds (the load is read from the analysis): 500 lb is far less.
  it('finds a part rated 500 lb under a crib that carries thousands', () => {
    const plan = onCribs(10_000, { rail: { rating: 500 * lb } });
    const findings = check(rule, plan);
    expect(findings.map((f) => [f.severity, f.subject.element, f.message.id])).toEqual([
      ['danger', 'crib/A', 'part-load.over-rating'],
      ['danger', 'crib/B', 'part-load.over-rating'],
    ]);
    expect(english(findings[0]?.message)).toMatch(
      /^Load on the .+ of the trailer from crib A: up to [\d,]+ lb \(.+\)\. Rating 500 lb\. Spread/,
    );
    const least = workingsOf(plan).loads().get('crib/A#1')?.load.value?.high ?? Number.NaN;
    expect(findings[0]?.figures[0]?.value?.high).toBeGreaterThanOrEqual(least);
    expect(findings[0]?.related[0]?.at).toEqual(plan.vehicles[0]?.parts.find((p) => p.id === 'rail')?.ref);
  });

  it('finds it in any order of the cribs, under a second vehicle, and with the weight a range', () => {
    const plan = onCribs(10_000, { rail: { rating: 500 * lb } });
    expect(idsOf({ ...plan, cribs: [...plan.cribs].reverse() })).toHaveLength(2);
    const car = { ...sedan, at: { x: 25 * foot, y: 30 * foot } };
    expect(idsOf({ ...plan, vehicles: [car, ...plan.vehicles] })).toHaveLength(2);
    // More than either crib carries, and all of them together: it passes until the weight is a range.
    const each = check(rule, plan).map((f) => f.figures[0]?.value?.high ?? Number.NaN);
    const [trailer] = onCribs(10_000, { rail: { rating: 2.1 * Math.max(...each) } }).vehicles;
    if (trailer === undefined) throw new Error('the plan has a trailer');
    expect(idsOf({ ...plan, vehicles: [trailer] })).toEqual([]);
    const cargo = trailer.cargo.map((c) => ({ ...c, weight: between(10_000 * lb, 60_000 * lb) }));
    expect(idsOf({ ...plan, vehicles: [{ ...trailer, cargo }] })).toContain('part-load.over-rating');
  });

  // Four cribs share the load once all stand. Before the second pair is there, the first carries all of it.
  it('finds it in a stage that is half built', () => {
    const plan = onCribs(10_000);
    const all = [
      ...plan.cribs,
      ...[-1, 1].map((side) => crib(side < 0 ? 'C' : 'D', 39.5 * foot, side * 42.75 * inch)),
    ];
    const worst = (p: Plan) =>
      check(rule, p).find((f) => f.subject.element === 'crib/A')?.figures[0]?.value?.high ?? 0;
    const whole = { ...plan, cribs: all, vehicles: onCribs(10_000, { rail: { rating: 1 * lb } }).vehicles };
    const rating = 1.001 * worst(whole);
    expect(rating).toBeGreaterThan(1000 * lb);
    const rated = { ...whole, vehicles: onCribs(10_000, { rail: { rating } }).vehicles };
    const onA = (p: Plan) =>
      check(rule, p).filter(
        (f) => f.subject.element === 'crib/A' && f.message.id === 'part-load.over-rating',
      );
    expect(onA(rated)).toEqual([]);
    const steps = [step(1, 'build', ['crib/A', 'crib/B']), step(2, 'build', ['crib/C', 'crib/D'])];
    expect(onA({ ...rated, steps })).toHaveLength(1);
  });

  it('adds up what all supports put on it at once', () => {
    const rated = (rating: number) => onCribs(10_000, { rail: { rating } });
    const each = check(rule, rated(1 * lb)).map((f) => f.figures[0]?.value?.high ?? Number.NaN);
    expect(each).toHaveLength(2);
    const [found, ...more] = check(rule, rated(1.001 * Math.max(...each)));
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity: 'danger', message: { id: 'part-load.over-together' } });
    expect(english(found?.message)).toContain('from crib A and crib B together: ');
    const together = found?.figures[0]?.value?.high ?? Number.NaN;
    expect(together).toBeGreaterThan(Math.max(...each));
    expect(idsOf(rated(1.001 * together))).toEqual(['part-load.over-at-worst']);
    expect(idsOf(rated(1.001 * each.reduce((sum, load) => sum + load, 0)))).toEqual([]);
  });

  // A tire lost puts more on all of them: the sum of their worst is no less than what comes at once.
  it('warns where they pass together as built, but not each at its worst', () => {
    const rated = (rating: number): Plan => {
      const plan = onCribs(10_000, { rail: { rating } });
      const axles = vanTrailer.axles.map((a) => ({ ...a, missing: [] }));
      return { ...plan, vehicles: plan.vehicles.map((v) => ({ ...v, axles })) };
    };
    const each = check(rule, rated(1 * lb)).map((f) => f.figures[0]?.value?.high ?? Number.NaN);
    expect(each).toHaveLength(2);
    const sum = each.reduce((a, b) => a + b, 0);
    const [found, ...more] = check(rule, rated(0.999 * sum));
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity: 'warning', message: { id: 'part-load.over-at-worst' } });
    expect(found?.figures[0]?.value?.high).toBeCloseTo(sum, 6);
    expect(check(rule, rated(1.001 * sum))).toEqual([]);
  });

  it('holds the head of a strut to the rating, too', () => {
    const plan = planOf({
      vehicles: [withPart(vanTrailer, 'rail', { rating: 100 * lb })],
      struts: [strut('S1', 20 * foot, 49 * inch, 81 * inch, { preload: 500 * lb })],
      policy: policyWith('friction strut base', 2),
      ground: gripping,
    });
    const [found] = check(rule, plan);
    expect(found).toMatchObject({
      severity: 'danger',
      at: { element: 'strut/S1', property: 'head' },
      message: { id: 'part-load.over-rating' },
    });
    expect(found?.figures[0]?.value?.high).toBe(workingsOf(plan).loads().get('strut/S1')?.load.value?.high);
  });

  it('does not pass a load that is not known', () => {
    const plan = onCribs(10_000, { rail: { rating: 50_000 * lb } });
    const vehicles = plan.vehicles.map((v) => ({
      ...v,
      axles: [],
      parts: v.parts.map(({ carries: _, ...p }) => p),
    }));
    expect(check(rule, { ...plan, vehicles })[0]).toMatchObject({
      couldNotRun: true,
      message: { id: 'part-load.unknown' },
    });
  });
});

describe('part-load, where a part is narrower than the timber', () => {
  // By hand: a joist 0.25 in wide on a 4×4, dressed 3.5 in (PS 20): 0.25 in × 3.5 in × 500 psi = 437.5 lb.
  it('counts the overlap of part and timber', () => {
    const [finding] = check(rule, onCribs(10_000, { joists: { width: 0.25 * inch } }));
    expect(finding).toMatchObject({ severity: 'danger', message: { id: 'part-load.narrow' } });
    expect(finding?.at).toEqual({ element: 'crib/A', property: 'captures' });
    expect((finding?.figures[1]?.value?.low ?? 0) / lb).toBeCloseTo(437.5, 6);
    expect(english(finding?.message)).toContain('Bearing capacity 437 lb (500 psi × 0.875 in2)');
  });

  it('passes a joist that is wide enough for what it carries', () =>
    expect(check(rule, onCribs(10_000, { joists: { width: 3 * inch } }))).toEqual([]));

  it('asks nothing of a part as wide as the timber', () =>
    expect(check(rule, onCribs(60_000, { joists: { width: 4 * inch }, rail: { width: 4 * inch } }))).toEqual(
      [],
    ));

  it('holds to a stricter policy', () => {
    const plan = onCribs(10_000, { joists: { width: 0.25 * inch } });
    const [finding] = check(rule, { ...plan, policy: policyWith('use limit', 0.5) });
    expect((finding?.figures[1]?.value?.low ?? 0) / lb).toBeCloseTo(218.75, 6);
  });
});

describe('part-load, where the strength is not known', () => {
  it('says so of a car under a trailer, and of none that has a rating for it', () => {
    const found = check(rule, trailerOnCar);
    expect(found.map((f) => [f.severity, f.message.id, f.couldNotRun])).toEqual([
      ['warning', 'part-load.vehicle-unknown', undefined],
    ]);
    expect(english(found[0]?.message)).toMatch(
      /^The trailer rests on the car with up to [\d,]+ lb\. Strength of the car not known\./,
    );
    expect(idsOf({ ...trailerOnCar, vehicles: [...trailerOnCar.vehicles].reverse() })).toEqual(
      found.map((f) => f.message.id),
    );
  });

  // The top of the sills is 12 in up, the rail 40 in: 7 courses of 3.5 in, 2 in of shims, 1.5 in for the wedges.
  it('says so of a part that a crib stands on', () => {
    const sills = { kind: 'vehicle', vehicle: sedan.id, part: 'sills' } as const;
    const plan = onCribs(10_000);
    const cribs = plan.cribs.map((c) =>
      c.name === 'A' ? { ...c, standsOn: sills, courses: 7, shims: 2 * inch } : c,
    );
    const car = { ...sedan, at: { x: 29 * foot, y: -42.75 * inch }, heading: 0 };
    const found = check(rule, { ...plan, vehicles: [...plan.vehicles, car], cribs });
    expect(found.map((f) => [f.severity, f.message.id, f.at])).toContainEqual([
      'note',
      'part-load.base-unknown',
      { element: 'crib/A', property: 'stands on' },
    ]);
  });
});

/**
 * The trailer on four cribs alone, no tires, nothing under the kingpin, 10,000 lb of cargo with its center 30 ft back.
 * By hand, in lb and ft: 18,600 in all, its center 38.5538 back, 12.0538 behind the middle of the cribs. Sixteen equal
 * contacts 14 ± 0.52083 off that middle, Σ x² = 16 (14² + 0.52083²) = 3,140.34, N = 1,162.5 + 18,600 × 12.0538 x ÷ Σ x²:
 * 2,199.19 on a rear contact of a rear crib, 2,124.83 on a front one. The rail meets one of each: 4,324.02 a crib.
 */
describe('part-load, against loads worked by hand', () => {
  const onFour = (change: Partial<Record<'rail' | 'joists', Partial<Part>>>): Plan => {
    const plan = onCribs(10_000, change);
    return {
      ...plan,
      vehicles: plan.vehicles.map((v) => ({ ...v, parts: v.parts.map(({ carries: _, ...p }) => p) })),
      cribs: [12.5, 40.5].flatMap((x) =>
        [-1, 1].map((side) =>
          crib(`${x < 20 ? 'front' : 'rear'}${side < 0 ? 'D' : 'P'}`, x * foot, side * 42.75 * inch),
        ),
      ),
    };
  };

  it('finds 4,324 lb on a rail rated 500 lb', () => {
    const found = check(rule, onFour({ rail: { rating: 500 * lb } })).filter((f) =>
      f.subject.element.startsWith('crib/rear'),
    );
    expect(found.map((f) => [f.severity, f.message.id, f.subject.element])).toEqual([
      ['danger', 'part-load.over-rating', 'crib/rearD'],
      ['danger', 'part-load.over-rating', 'crib/rearP'],
    ]);
    for (const f of found) expect((f.figures[0]?.value?.high ?? 0) / lb).toBeCloseTo(4324.02, 2);
  });

  it('passes a rail rated for both sides and both ends: four cribs put 9,300 lb on it', () => {
    expect(idsOf(onFour({ rail: { rating: 9301 * lb } }))).toEqual([]);
    expect(idsOf(onFour({ rail: { rating: 9299 * lb } }))).toEqual(['part-load.over-together']);
  });

  it('finds 2,199 lb on a joist of 0.25 in that bears 437.5 lb, where a contact of the crib bears 6,000 lb', () => {
    const plan = onFour({ joists: { width: 0.25 * inch } });
    expect(check(cribLoad, plan)).toEqual([]);
    const capacity = workingsOf(plan).cribs()[0]?.contactCapacity.value?.low ?? 0;
    expect(capacity / lb).toBeCloseTo(6000, 6);
    const found = check(rule, plan).find((f) => f.subject.element === 'crib/rearD');
    expect(found).toMatchObject({ severity: 'danger', message: { id: 'part-load.narrow' } });
    expect((found?.figures[0]?.value?.high ?? 0) / lb).toBeCloseTo(2199.19, 2);
    expect((found?.figures[1]?.value?.low ?? 0) / lb).toBeCloseTo(437.5, 6);
  });
});
