import { describe, expect, it } from 'vitest';
import {
  driveForce,
  keepForce,
  pairDriveForces,
  slippingWedge,
  staysByItself,
  steepestTaper,
  type Wedge,
} from './wedge-drive.js';

const degree = Math.PI / 180;
const wedge = (taper: number, slopeFriction: number, flatFriction = slopeFriction): Wedge => ({
  taper: taper * degree,
  slopeFriction,
  flatFriction,
});

/**
 * The same by elimination, normal force by normal force, with no friction angle: the load down on the slope, friction
 * μN along it, then the wedge level. `sign` 1 drives in, −1 lets out.
 */
function byElimination({ taper, slopeFriction, flatFriction }: Wedge, load: number, sign: 1 | -1): number {
  const [sin, cos] = [Math.sin(taper), Math.cos(taper)];
  const normal = load / (cos - sign * slopeFriction * sin);
  return normal * sin + sign * (slopeFriction * normal * cos + flatFriction * load);
}

describe('one wedge', () => {
  // Baker and Haynes, Engineering Statics: Open and Interactive, chapter 9, wedge example: P = 9.35 lb, N2 = 12.17 lb.
  it('is driven as the published example says', () =>
    expect(driveForce(wedge(25, 0.2), 10)).toBeCloseTo(9.35, 2));
  it.each([
    [wedge(25, 0.2), 10],
    [wedge(11, 0.45, 0.3), 6000],
    [wedge(45, 0.1, 0.6), 1],
    [wedge(0, 0.4), 100],
  ])('agrees with the forces worked out one by one: %o', (one, load) => {
    expect(driveForce(one, load)).toBeCloseTo(byElimination(one, load, 1), 9);
    expect(keepForce(one, load)).toBeCloseTo(byElimination(one, load, -1), 9);
  });
  it('cannot be driven where friction locks it', () =>
    expect(driveForce(wedge(60, 0.6), 1)).toBe(Number.POSITIVE_INFINITY));
  it('needs nothing to keep it just up to its steepest taper', () => {
    const steepest = steepestTaper({ slopeFriction: 0.45, flatFriction: 0.3 }) / degree;
    expect(keepForce(wedge(steepest, 0.45, 0.3), 1000)).toBeCloseTo(0, 9);
    expect(staysByItself(wedge(steepest - 0.01, 0.45, 0.3))).toBe(true);
    expect(keepForce(wedge(steepest - 0.01, 0.45, 0.3), 1000)).toBeLessThan(0);
    expect(staysByItself(wedge(steepest + 0.01, 0.45, 0.3))).toBe(false);
    expect(keepForce(wedge(steepest + 0.01, 0.45, 0.3), 1000)).toBeGreaterThan(0);
  });
  it('without friction neither stays nor costs more than its slope', () => {
    expect(staysByItself(wedge(1, 0))).toBe(false);
    expect(driveForce(wedge(30, 0), 100)).toBeCloseTo(100 * Math.tan(30 * degree), 9);
  });
});

describe('a pair', () => {
  const pair = { taper: 11 * degree, slopeFriction: 0.45, lowerFriction: 0.45, upperFriction: 0.3 };
  it('takes at each end what a single wedge takes against that face', () => {
    const { lower, upper } = pairDriveForces(pair, 1000);
    expect(lower).toBeCloseTo(byElimination(wedge(11, 0.45, 0.45), 1000, 1), 9);
    expect(upper).toBeCloseTo(byElimination(wedge(11, 0.45, 0.3), 1000, 1), 9);
  });
  it('slips first at the outer face that grips least, whichever way up', () => {
    const turned = { ...pair, lowerFriction: 0.3, upperFriction: 0.45 };
    expect(slippingWedge(pair)).toEqual(slippingWedge(turned));
    expect(slippingWedge(pair).flatFriction).toBe(0.3);
  });
  it('of one friction all over stays up to twice its angle', () =>
    expect(
      steepestTaper(slippingWedge({ ...pair, slopeFriction: 0.2, lowerFriction: 0.2, upperFriction: 0.2 })),
    ).toBeCloseTo(2 * Math.atan(0.2), 12));
});
