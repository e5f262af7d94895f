import { place } from '@cribwright/model';
import { planOf, tallCrib, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { pointsOf } from './project.js';
import { vehicleSolids as solidsOf } from './vehicle-solids.js';

const vehicleSolids = (v: typeof vanTrailer) =>
  place(planOf({ vehicles: [v] })).vehicles.all.flatMap(solidsOf);

const legs = {
  ...(vanTrailer.parts.find((p) => p.form === 'rails') ?? tallCrib.vehicles[0]?.parts[0]),
  id: 'legs',
  name: 'landing gear',
  form: 'points' as const,
  from: 9 * 0.3048,
  to: 9 * 0.3048,
  offsets: [-0.9, 0.9],
  height: { low: 0.3, high: 0.3 },
  depth: 0.05,
  width: 0.1,
} as (typeof vanTrailer.parts)[number];
const trailer = { ...vanTrailer, parts: [...vanTrailer.parts, legs] };
const heights = (solids: ReturnType<typeof vehicleSolids>, key: RegExp) =>
  solids.filter((s) => key.test(s.key)).flatMap((s) => pointsOf(s).map((p) => p.z));

describe('the landing gear of a trailer', () => {
  it('hang from its floor while they are up', () => {
    const floor = Math.min(...vanTrailer.parts.filter((p) => p.form === 'rails').map((p) => p.height.low));
    const own = heights(vehicleSolids(trailer), /^legs/);
    expect(Math.min(...own)).toBeCloseTo(0.3, 9);
    expect(Math.max(...own)).toBeCloseTo(floor, 9);
  });

  it('end at the ground where its nose is down', () => {
    const down = { ...trailer, position: { kind: 'pitched', angle: 0.06 } } as typeof vanTrailer;
    const own = heights(vehicleSolids(down), /^legs/);
    expect(own.length).toBeGreaterThan(0);
    for (const height of own) expect(height).toBeGreaterThanOrEqual(0);
    const all = vehicleSolids(down).flatMap((s) => pointsOf(s).map((p) => p.z));
    expect(Math.min(...all)).toBeGreaterThan(-1e-6);
  });
});
