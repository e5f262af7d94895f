import type { Vehicle, VehiclePosition } from '@cribwright/model';
import { between, exactly, partNamed, posed, underside } from '@cribwright/model';
import { posedCenter } from '@cribwright/model/internal';
import { degree, foot, inch, lb, planOf, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';

const as = (position: VehiclePosition): Vehicle => ({ ...vanTrailer, position });
const rail = (position: VehiclePosition) => {
  const part = partNamed(posed(as(position)), 'rail');
  if (part === undefined) throw new Error('no rail');
  return part;
};

describe('a vehicle as it lies', () => {
  // The trailer is 162 in high and 102 in wide; its rails are 4 in deep from 40 in up, 49 in off the centerline.
  it('on its driver side has its rails 81 − 42 in from the middle, the lower one 0.5 in up', () => {
    const part = rail({ kind: 'on its side', side: 'driver' });
    expect(part.offsets.map((y) => y / inch)).toEqual([expect.closeTo(39, 9)]);
    expect(part.height.low / inch).toBeCloseTo(51 - 49 - 1.5, 9);
  });
  it('mirrors on its passenger side', () =>
    expect(rail({ kind: 'on its side', side: 'passenger' }).offsets[0]).toBeCloseTo(-39 * inch, 9));
  it('counts of a part whose height is a range only what is there at both ends of it', () => {
    const parts = vanTrailer.parts.map((p) =>
      p.id === 'rail' ? { ...p, height: between(p.height.low, p.height.low + 1 * inch) } : p,
    );
    const lying: Vehicle = { ...vanTrailer, parts, position: { kind: 'on its side', side: 'driver' } };
    const part = partNamed(posed(lying), 'rail');
    // 4 in deep, its place known to within 1 in.
    expect((part?.width ?? 0) / inch).toBeCloseTo(3, 9);
  });
  it('on its roof has what was on top below', () =>
    expect(rail({ kind: 'on its roof' }).height.low / inch).toBeCloseTo(162 - 44, 9));
  it('turns its center of gravity with it', () => {
    const { y, z } = posedCenter(as({ kind: 'on its side', side: 'driver' }), exactly(0), exactly(60 * inch));
    expect([(y?.low ?? 0) / inch, (z?.low ?? 0) / inch]).toEqual([
      expect.closeTo(21, 9),
      expect.closeTo(51, 9),
    ]);
  });
  it('rests on the ground over its whole side', () => {
    const w = workingsOf(planOf({ vehicles: [as({ kind: 'on its side', side: 'driver' })] }));
    const reactions = w.stages()[0]?.asBuilt.reactions ?? [];
    expect(reactions).toHaveLength(4);
    expect(reactions.reduce((sum, r) => sum + r.load.high, 0) / lb).toBeGreaterThan(50_000);
  });
  it('nose down by 5 degrees drops its front about its last axle', () => {
    const vehicle = as({ kind: 'pitched', angle: 5 * degree });
    const part = partNamed(vehicle, 'rail');
    if (part === undefined) throw new Error('no rail');
    const at = (x: number) => underside(vehicle, part, { x: x * foot, y: 0 }).low / inch;
    // By hand: 40 cos 5° − (50.5 − 10.5) ft × 12 × sin 5° = 39.85 − 41.83.
    expect(at(10.5)).toBeCloseTo(40 * Math.cos(5 * degree) - 480 * Math.sin(5 * degree), 9);
    expect(at(50.5)).toBeCloseTo(40 * Math.cos(5 * degree), 9);
  });
});
