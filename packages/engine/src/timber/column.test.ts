import { describe, expect, it } from 'vitest';
import { columnStability, eulerLoad, slenderness, strutFailureLoad, tube } from './column.js';

const psi = 4.4482216152605 / 0.0254 ** 2;

describe('column stability', () => {
  it('gives Cp of the HUD example', () => {
    // HUD Residential Structural Design Guide, 2nd edition (2017), example 5.6: 4×4 spruce-pine-fir No. 2, 7.3 ft.
    const cp = columnStability(1150 * 1.15 * psi, 510_000 * psi, slenderness(7.3 * 12, 3.5));
    expect(cp).toBeCloseTo(0.43783, 5);
  });
  it('never passes 1 and never rises as the post gets longer', () => {
    let last = 1;
    for (let slender = 0; slender <= 75; slender += 0.5) {
      const cp = columnStability(1350 * psi, 580_000 * psi, slender);
      expect(cp).toBeLessThanOrEqual(last);
      expect(cp).toBeGreaterThan(0);
      last = cp;
    }
  });
});

describe('tubes', () => {
  const steel = { modulus: 200e9, yield: 250e6, ...tube(0.075, 0.07) };
  it("gives Euler's load of the textbook tube", () => {
    // Mechanics of materials textbook, chapter 13 (Columns), example 13.1: 228.2 kN.
    expect(eulerLoad(steel.modulus, steel.inertia, 7.2) / 1000).toBeCloseTo(228.2, 1);
  });
  it('never carries more than squashes it', () => {
    expect(strutFailureLoad(steel, 0.5)).toBe(steel.yield * steel.area);
    expect(strutFailureLoad(steel, 0)).toBe(steel.yield * steel.area);
    expect(strutFailureLoad(steel, 7.2)).toBeCloseTo(228.2e3, -2);
  });
});
