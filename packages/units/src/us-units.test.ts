import { expect, it } from 'vitest';
import { foot, inch, poundForce, psf, psi } from './us-units.js';

// NIST SP 811 (2008), appendix B: 1 in = 0.0254 m, 1 lbf = 4.448 221 615 260 5 N, both exact.
it('gives the exact sizes of the units that limits and settings are written in', () => {
  expect(inch).toBe(0.0254);
  expect(foot).toBe(0.3048);
  expect(poundForce).toBe(4.4482216152605);
  expect(psi).toBeCloseTo(6894.757293, 5);
  expect(psf).toBeCloseTo(47.88025898, 7);
});
