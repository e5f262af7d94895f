import { describe, expect, it } from 'vitest';
import { edgeFactor, effectiveShare } from './eccentric.js';

const off = (x: number, y = 0) => ({ x, y, length: 2, width: 3 });

describe('a load off the middle of a base', () => {
  it('bears on all of it, evenly, from the middle', () => {
    expect(effectiveShare(off(0))).toBe(1);
    expect(edgeFactor(off(0))).toBe(1);
  });

  // At the edge of the kern, e = B/6: B′ = 2B/3, and the pressure is a triangle from 0 to twice the mean.
  it('gives a triangle at the edge of the kern', () => {
    expect(effectiveShare(off(2 / 6))).toBeCloseTo(2 / 3, 12);
    expect(edgeFactor(off(2 / 6))).toBeCloseTo(2, 12);
  });

  // By hand, e = B/4: B′ = B/2, so twice the mean. The triangle is 3 (B/2 − e) = 3B/4 long: 2 P / (3B/4) = 8/3 the mean.
  it('leaves the far side out beyond the kern', () => {
    expect(effectiveShare(off(0.5))).toBeCloseTo(1 / 2, 12);
    expect(edgeFactor(off(0.5))).toBeCloseTo(8 / 3, 12);
  });

  // 1,533 psf evenly, 3,198 psf on the effective width: B′/B = 0.4794, e/B = 0.2603. The edge is 4/3 of it: 4,264 psf.
  it('turns 1,533 psf into 3,198 psf on the effective width and 4,265 psf at the edge', () => {
    const at = off((0.2603 + 0.00002) * 2);
    expect(1533 / effectiveShare(at)).toBeCloseTo(3198, -1);
    expect((1533 * edgeFactor(at)) / 4265).toBeCloseTo(1, 3);
  });

  it('is the same mirrored, and worse the farther off', () => {
    expect(edgeFactor(off(-0.4, 0.3))).toBe(edgeFactor(off(0.4, -0.3)));
    let last = 1;
    for (let e = 0; e < 1; e += 0.01) {
      expect(edgeFactor(off(e))).toBeGreaterThanOrEqual(last);
      last = edgeFactor(off(e));
      expect(last).toBeGreaterThanOrEqual(1 / effectiveShare(off(e)) - 1e-12);
    }
  });

  it('bears on nothing where the load is off the base', () => {
    expect(effectiveShare(off(1.2))).toBe(0);
    expect(edgeFactor(off(1.2))).toBe(Number.POSITIVE_INFINITY);
  });
});
