import { calculationOf, english } from '@cribwright/messages/testing';
import { between, exactly } from '@cribwright/model';
import { foot, lb, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { bodyMass, cargoCenter } from './body-mass.js';
import { weightedMean } from './weighted-mean.js';

const mass = bodyMass(vanTrailer);

describe('weight and center of gravity', () => {
  it('adds axles, kingpin and cargo', () => {
    expect((mass.weight.value?.low ?? 0) / lb).toBeCloseTo(14_000 + 36_000, 6);
    expect((mass.weight.value?.high ?? 0) / lb).toBeCloseTo(14_000 + 42_000, 6);
    expect(calculationOf(mass.weight)?.numbers).toBe('14,000 lb + 36,000 to 42,000 lb');
  });

  // Moments about the front by hand: kingpin 5,400 × 3, tandem 4,300 × 46.5 and × 50.5, over 14,000 = 30.95 ft.
  it('takes the empty center from what each axle carries', () => {
    const empty = bodyMass({ ...vanTrailer, cargo: [] });
    expect((empty.x.value?.low ?? 0) / foot).toBeCloseTo((5400 * 3 + 4300 * 97) / 14_000, 9);
  });

  it('says of each part of the empty center how it is known', () => {
    const how = (axis: 'x' | 'y' | 'z') => {
      const center = mass[axis].inputs.find((f) => english(f.label) === 'center of the empty vehicle');
      return [center?.source.kind, calculationOf(center)?.names, center?.assumes?.length ?? 0];
    };
    expect(how('x')).toEqual(['computed', 'middle of what its axles and kingpin carry', 0]);
    expect(how('y')).toEqual(['computed', 'on its center line', 1]);
    // The height is read off the vehicle, not worked out.
    expect(how('z')).toEqual([vanTrailer.source.kind, undefined, 0]);
  });

  it('keeps to the middle third of a load whose center is not given', () => {
    const [cargo] = vanTrailer.cargo;
    if (cargo === undefined) throw new Error('the sample carries no cargo');
    const third = cargoCenter(cargo);
    expect(third.low / foot).toBeCloseTo(4 + 44 / 3, 9);
    expect(third.high / foot).toBeCloseTo(48 - 44 / 3, 9);
    expect(english(mass.x.assumes?.[0])).toContain('middle third');
  });

  // By hand: 14,000 lb empty on its center line and 42,000 lb that may lie anywhere from 4 ft to 48 ft back, and from side to
  // side of a trailer 102 in wide: the center is up to (42,000 × 51 in) ÷ 56,000 = 38.25 in off the center line.
  it('lets cargo that may shift lie anywhere in its bay, to both ends and both sides', () => {
    const cargo = vanTrailer.cargo.map((c) => ({ ...c, shifts: true }));
    const loose = bodyMass({ ...vanTrailer, cargo });
    const empty = 5400 * 3 + 4300 * 97;
    expect((loose.x.value?.low ?? 0) / foot).toBeCloseTo((empty + 42_000 * 4) / 56_000, 9);
    expect((loose.x.value?.high ?? 0) / foot).toBeCloseTo((empty + 42_000 * 48) / 56_000, 9);
    expect((loose.y.value?.high ?? 0) / foot).toBeCloseTo(38.25 / 12, 9);
    expect((loose.y.value?.low ?? 0) / foot).toBeCloseTo(-38.25 / 12, 9);
    expect(loose.weight.value).toEqual(mass.weight.value);
    expect(loose.z.value).toEqual(mass.z.value);
    // Where it lies now does not hold it there.
    const seen = cargo.map((c) => ({ ...c, center: exactly(20 * foot), offset: exactly(0) }));
    expect(bodyMass({ ...vanTrailer, cargo: seen }).x.value).toEqual(loose.x.value);
    expect(loose.x.assumes).toBeUndefined();
  });

  it('is governed by the heavy end at the front and at the rear', () => {
    const empty = 14_000 * ((5400 * 3 + 4300 * 97) / 14_000);
    expect((mass.x.value?.low ?? 0) / foot).toBeCloseTo((empty + 42_000 * (4 + 44 / 3)) / 56_000, 9);
    expect((mass.x.value?.high ?? 0) / foot).toBeCloseTo((empty + 42_000 * (48 - 44 / 3)) / 56_000, 9);
  });

  it('does not know the height where the cargo gives none', () => {
    const cargo = vanTrailer.cargo.map((c) => ({ ...c, height: undefined }));
    expect(bodyMass({ ...vanTrailer, cargo }).z.value).toBeUndefined();
  });

  it('takes a stated weight and center as they are', () => {
    const stated = {
      ...vanTrailer,
      cargo: [],
      statedWeight: exactly(1000),
      statedCenter: { x: exactly(5), y: exactly(0), z: between(1, 2) },
    };
    const { weight, x, z } = bodyMass(stated);
    expect([weight.value, x.value, z.value]).toEqual([exactly(1000), exactly(5), between(1, 2)]);
  });

  it('does not know the weight of a vehicle without axles', () =>
    expect(bodyMass({ ...vanTrailer, axles: [], parts: [] }).weight.value).toBeUndefined());
});

describe('weighted mean over ranges', () => {
  it('is exact: no corner of the box lies outside, and both ends are reached', () => {
    const items = [
      { weight: between(1, 4), at: between(0, 1) },
      { weight: between(2, 3), at: between(5, 6) },
      { weight: between(0.5, 6), at: between(-2, 3) },
    ];
    const mean = weightedMean(items);
    const corners = Array.from({ length: 64 }, (_, bits) => {
      let sum = 0;
      let moment = 0;
      items.forEach((item, i) => {
        const w = bits & (1 << i) ? item.weight.high : item.weight.low;
        sum += w;
        moment += w * (bits & (8 << i) ? item.at.high : item.at.low);
      });
      return moment / sum;
    });
    expect(mean?.low).toBeCloseTo(Math.min(...corners), 12);
    expect(mean?.high).toBeCloseTo(Math.max(...corners), 12);
  });
});
