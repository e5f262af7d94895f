import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import {
  lb,
  planOf,
  policyWith,
  samplePlans,
  step,
  strap,
  trailerOnCar,
  truckOnCar,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import type { LoadCase } from '../analysis/analysis.js';
import { workingsOf } from '../derived/workings.js';

const stages = (plan: Plan) => workingsOf(plan).stages();
const on = (c: LoadCase | undefined, part: string) =>
  (c?.reactions ?? []).filter((r) => r.id.startsWith(part)).reduce((s, r) => s + r.load.high, 0);
const lossOf = (plan: Plan, title: string) =>
  stages(plan)
    .at(-1)
    ?.losses.find((l) => english(l.title) === title);

describe('stages of a plan', () => {
  it.each(Object.entries(samplePlans))(
    'never lets a contact of %s pull, and balances its weights',
    (_name, plan) => {
      const w = workingsOf(plan);
      for (const stage of w.stages())
        for (const c of [stage.asBuilt, ...stage.losses]) {
          for (const r of c.reactions) {
            expect(r.load.low).toBeGreaterThanOrEqual(0);
            expect(r.load.high).toBeGreaterThanOrEqual(r.load.low);
          }
          if (!c.rests) continue;
          const all = plan.vehicles.reduce((s, v) => s + (w.masses().get(v.id)?.weight.value?.high ?? 0), 0);
          const ground = c.reactions.filter((r) => r.lower === 'ground');
          // Greatest loads belong to different corners: together they are at least the heaviest weight.
          expect(ground.reduce((s, r) => s + r.load.high, 0)).toBeGreaterThanOrEqual(all * (1 - 1e-9));
          expect(ground.reduce((s, r) => s + r.load.low, 0)).toBeLessThanOrEqual(all * (1 + 1e-9));
        }
    },
  );

  it('leaves cribs that stand snug without load, as built', () => {
    const last = stages(trailerOnCar).at(-1)?.asBuilt;
    expect(last?.rests).toBe(true);
    expect(on(last, 'crib/')).toBeLessThan(1 * lb);
  });

  it('moves the load to the cribs when the car gives way', () => {
    const gone = lossOf(trailerOnCar, 'car gives way');
    expect(gone?.lost).toEqual({ element: 'vehicle/car' });
    expect(gone?.reactions.some((r) => r.id.startsWith('contact/car-trailer'))).toBe(false);
    expect(on(gone, 'crib/A')).toBeGreaterThan(100 * lb);
    expect(on(gone, 'crib/B')).toBeLessThan(1 * lb);
  });

  it('loses air springs, tires, and the ground under a tied strut, and no chocked kingpin', () => {
    const titles = stages(trailerOnCar)
      .at(-1)
      ?.losses.map((l) => english(l.title));
    expect(titles).toContain('trailer axle 1: air springs deflated');
    expect(titles).toContain('trailer axle 1, driver side: tire lost');
    expect(titles).toContain('ground gives way under the base of strut S1');
    expect(titles?.some((t) => t.includes('kingpin'))).toBe(false);
  });

  it('loses the ground under cribs where the policy says that it may give way, and not else', () => {
    const ground = (plan: typeof trailerOnCar) =>
      stages(plan)
        .at(-1)
        ?.losses.filter((l) => l.id.startsWith('crib/'));
    expect(ground(trailerOnCar)).toEqual([]);
    const soft = ground({ ...trailerOnCar, policy: policyWith('ground under cribs', 'may give way') });
    expect(soft?.map((l) => english(l.title))).toContain('ground gives way under crib A');
    // All contacts of the crib go, and only those.
    const gone = soft?.find((l) => l.id === 'crib/A/ground');
    expect(gone?.lost).toEqual({ element: 'crib/A', property: 'stands on' });
    expect(new Set(gone?.reactions.map((r) => r.element))).not.toContain('crib/A');
    expect(new Set(gone?.reactions.map((r) => r.element))).toContain('crib/B');
  });

  it('does not count a strut before its tie stands', () => {
    const [set, tied] = stages(trailerOnCar).slice(-2);
    expect(set?.asBuilt.reactions.some((r) => r.id === 'strut/S1')).toBe(false);
    expect(tied?.asBuilt.reactions.some((r) => r.id === 'strut/S1')).toBe(true);
  });

  it('does not count a strut whose tie pulls across the way in which its base would slide', () => {
    const strutsIn = (plan: Plan) =>
      stages(plan)
        .at(-1)
        ?.asBuilt.reactions.filter((r) => r.element.startsWith('strut/'))
        .map((r) => r.element);
    expect(strutsIn(trailerOnCar)).toEqual(['strut/S1', 'strut/S2', 'strut/S3', 'strut/S4']);
    // Lengthwise, from one foot to the next on the same side.
    const aside = [strap('T1', 'S1', 'S3'), strap('T2', 'S2', 'S4')];
    expect(strutsIn({ ...trailerOnCar, ties: aside })).toEqual([]);
  });

  it('gives no loads where something does not rest, and names the end', () => {
    const truck = truckOnCar.vehicles.map((v) =>
      v.name === 'truck' ? { ...v, axles: v.axles.filter((a) => a.id !== 'axle 1') } : v,
    );
    const found = stages(planOf({ vehicles: truck.slice(0, 1) }))[0]?.asBuilt;
    expect(found?.rests).toBe(false);
    expect(english(found?.free)).toBe('the front of the truck');
    expect(found?.reactions).toEqual([]);
  });

  it('shares a driven wedge: the crib takes load at once, the tires give it', () => {
    const driven = {
      ...truckOnCar,
      cribs: truckOnCar.cribs.map((c) =>
        c.name === 'A' && c.wedges !== undefined ? { ...c, wedges: { ...c.wedges, preload: 2000 * lb } } : c,
      ),
    };
    const [snug, tight] = [truckOnCar, driven].map((p) => stages(p).at(-1)?.asBuilt);
    expect(on(tight, 'crib/A')).toBeCloseTo(2000 * lb, 3);
    expect(on(tight, 'vehicle/truck')).toBeLessThan(on(snug, 'vehicle/truck'));
  });

  it('mirrors: what is on the driver side of one plan is on the passenger side of the other', () => {
    const flip = (p: Plan): Plan => ({
      ...p,
      vehicles: p.vehicles.map((v) => ({
        ...v,
        at: { x: v.at.x, y: -v.at.y },
        heading: -v.heading,
      })),
      contacts: p.contacts.map((c) => ({ ...c, points: c.points.map((o) => ({ x: o.x, y: -o.y })) })),
      cribs: p.cribs.map((c) => ({ ...c, at: { x: c.at.x, y: -c.at.y } })),
    });
    const plan = {
      ...truckOnCar,
      chocks: [],
      steps: [step(1, 'build', ['crib/A', 'crib/B', 'crib/C', 'crib/D'])],
    };
    const [a, b] = [plan, flip(plan)].map((p) => lossOf(p, 'car gives way'));
    expect(on(b, 'crib/A')).toBeCloseTo(on(a, 'crib/A'), 3);
    expect(on(b, 'vehicle/truck/axle 2/passenger')).toBeCloseTo(on(a, 'vehicle/truck/axle 2/driver'), 3);
  });

  it('works out a crosswise and a lengthwise plan alike', () => {
    const turned: Plan = {
      ...truckOnCar,
      vehicles: truckOnCar.vehicles.map((v) => ({
        ...v,
        at: { x: -v.at.y, y: v.at.x },
        heading: v.heading + Math.PI / 2,
      })),
      contacts: truckOnCar.contacts.map((c) => ({
        ...c,
        points: c.points.map((o) => ({ x: -o.y, y: o.x })),
      })),
      cribs: [],
    };
    const [a, b] = [{ ...truckOnCar, cribs: [] }, turned].map((p) => stages(p)[0]?.asBuilt);
    for (const r of a?.reactions ?? []) expect(on(b, r.id)).toBeCloseTo(r.load.high, 3);
  });
});
