import { name } from '@cribwright/messages';
import { english } from '@cribwright/messages/testing';
import type { Pad, PadMaterial } from '@cribwright/model';
import { exactly, given } from '@cribwright/model';
import { pressure } from '@cribwright/model/internal';
import { foot, inch, lb, psf } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { padSpread } from './pad-spread.js';

const psi = lb / inch ** 2;
const clay = 1500 * psf;
const on = (bearing: number | undefined) =>
  given(
    pressure('allowable', name('allowable'), 'down'),
    bearing === undefined ? undefined : exactly(bearing),
    {
      kind: 'stated',
    },
  );
const pad = (material: PadMaterial | undefined, thickness: number, size = 20 * foot): Pad => ({
  kind: 'pad',
  id: 'pad/P1',
  name: 'P1',
  length: size,
  width: size,
  thickness,
  material,
  under: 'strut/S1',
  ref: { element: 'pad/P1' },
});
const foot12 = { lengthwise: 12 * inch, crosswise: 12 * inch };
const sides = (
  material: PadMaterial | undefined,
  thickness: number,
  bearing: number | 'unknown' = clay,
  size?: number,
) => {
  const { long, wide } = padSpread(
    pad(material, thickness, size),
    foot12,
    on(bearing === 'unknown' ? undefined : bearing),
  );
  return [long, wide].map(
    (f) => f.value && [f.value.low / inch, f.value.high / inch].map((v) => Number(v.toFixed(3))),
  );
};

describe('how far a pad spreads a load', () => {
  // By hand, clay of 1,500 psf = 10.417 psi, steel 0.1 in: bending 0.1 √(27,000 ÷ 31.25) = 2.939 in on each side; shear
  // 0.1 × 14,400 ÷ 15.625 = 92 in. 12 in + 2 × 2.939 in = 17.879 in, and not 20 ft.
  it('is far less than a square of 20 ft for one that is 0.1 in thick', () =>
    expect(sides('steel', 0.1 * inch)).toEqual([
      [17.879, 17.879],
      [17.879, 17.879],
    ]));

  // Timber of 3.5 in: bending 3.5 √(500 ÷ 31.25) = 14 in; shear 3.5 × 125 ÷ 15.625 = 28 in. 12 + 28 = 40 in along the grain.
  it('is along the grain alone for timbers side by side', () =>
    expect(sides('timber', 3.5 * inch)).toEqual([
      [40, 40],
      [12, 12],
    ]));

  // Plywood of 1.5 in is two layers of 3/4 in: 1.5 √(160 ÷ (3 × 2 × 10.417)) = 2.400 in; shear 1.5 × 40 ÷ 15.625 = 3.84 in.
  it('is by layers that bend one by one for plywood', () =>
    expect(sides('plywood', 1.5 * inch)).toEqual([
      [16.8, 16.8],
      [16.8, 16.8],
    ]));

  // Timber of 1 in on 1,000 psi: bending 1 √(500 ÷ 3000) = 0.408 in; shear 125 ÷ 1500 = 0.0833 in governs.
  it('is limited by shear on hard ground', () =>
    expect(sides('timber', 1 * inch, 1000 * psi)[0]).toEqual([12.167, 12.167]));

  it('is no more than the pad', () =>
    expect(sides('steel', 2 * inch, clay, 2 * foot)).toEqual([
      [24, 24],
      [24, 24],
    ]));

  it('is somewhere between the foot and the pad where nobody stated the material', () =>
    expect(sides(undefined, 3.5 * inch, clay, 2 * foot)).toEqual([
      [12, 24],
      [12, 24],
    ]));

  it('is not known where the ground is not known', () =>
    expect(sides('steel', 1 * inch, 'unknown')).toEqual([undefined, undefined]));

  it('grows with thickness and never with a harder ground', () => {
    const long = (t: number, q: number) => sides('timber', t * inch, q)[0]?.[0] ?? Number.NaN;
    for (let t = 0.5; t < 8; t += 0.5) {
      expect(long(t + 0.5, clay)).toBeGreaterThan(long(t, clay));
      expect(long(t, 2 * clay)).toBeLessThan(long(t, clay));
    }
  });

  it('says how it is worked out', () => {
    const { area } = padSpread(pad('timber', 3.5 * inch), foot12, on(clay));
    expect(english(area.inputs[0]?.label)).toBe('side of the pad that bears');
    expect((area.value?.low ?? 0) / inch ** 2).toBeCloseTo(480, 6);
  });
});
