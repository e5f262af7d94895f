import { calculationOf, english } from '@cribwright/messages/testing';
import { lb, policyWith, trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';

const loads = (plan: typeof truckOnCar) => workingsOf(plan).loads();

describe('governing loads', () => {
  it('names the case, and the corner of the ranges', () => {
    const load = loads(truckOnCar).get('crib/A#1')?.load;
    expect(english(load?.governs)).toBe(
      'truck axle 1, driver side: tire lost, cribs and struts 2 times as stiff, truck heaviest, center farthest to its front',
    );
    expect(calculationOf(load)?.names).toBe('stiffness × settling since it was placed');
  });

  it('adds up a crib from its contacts in one and the same case', () => {
    const all = loads(trailerOnCar);
    const whole = all.get('crib/A')?.load;
    const parts = whole?.inputs.map((f) => f.value?.high ?? Number.NaN) ?? [];
    expect(parts).toHaveLength(4);
    expect(parts.reduce((s, f) => s + f, 0)).toBeCloseTo(whole?.value?.high ?? Number.NaN, 6);
    const worst = [1, 2, 3, 4].map((n) => all.get(`crib/A#${n}`)?.load.value?.high ?? Number.NaN);
    expect(worst.reduce((s, f) => s + f, 0)).toBeGreaterThanOrEqual((whole?.value?.high ?? 0) - 1e-6);
  });

  it('takes the worst of softer and stiffer supports, where the policy asks for it', () => {
    const once = loads({ ...truckOnCar, policy: policyWith('stiffness spread', 1) });
    const twice = loads(truckOnCar);
    for (const [id, { load }] of once)
      expect(twice.get(id)?.load.value?.high ?? 0).toBeGreaterThanOrEqual((load.value?.high ?? 0) - 1e-6);
    expect(twice.get('crib/A#1')?.load.value?.high).toBeGreaterThan(
      once.get('crib/A#1')?.load.value?.high ?? 0,
    );
  });

  it('stays under the bound by statics, which is a lever', () => {
    const all = loads(truckOnCar);
    let bounded = 0;
    for (const { load, bound } of all.values()) {
      if (bound?.value === undefined || load.value === undefined) continue;
      bounded++;
      expect(load.value.high).toBeLessThanOrEqual(bound.value.high * (1 + 1e-9));
    }
    expect(bounded).toBeGreaterThan(20);
    expect(calculationOf(all.get('crib/A#1')?.bound)?.names).toBe(
      'weight of truck × distance of the center from the line of the far supports ÷ distance of this support from that line',
    );
  });

  it('gives a strut its load along itself', () => {
    const all = loads(trailerOnCar);
    const load = all.get('strut/S1')?.load;
    expect(calculationOf(load)?.names).toBe('load, upward part ÷ sin(angle)');
    expect(load?.value?.high).toBeGreaterThan(1 * lb);
  });

  it('does not know loads where nothing rests', () => {
    const gone = {
      ...truckOnCar,
      vehicles: truckOnCar.vehicles.map((v) => (v.name === 'truck' ? { ...v, axles: [] } : v)),
    };
    for (const [id, { load }] of loads({ ...gone, cribs: gone.cribs.slice(0, 1) }))
      if (id.startsWith('crib/A')) expect(load.value).toBeUndefined();
  });
});
