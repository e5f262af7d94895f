import fc from 'fast-check';
import { expect, it } from 'vitest';
import { residual, tangent } from './assemble.js';
import { modelOf } from './model.js';
import { start } from './state.js';
import { numbersFrom, randomScene } from './testing/random-scene.js';

it('derives the sum of forces as differences do, at random places', () => {
  let compared = 0;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
      const { scene } = randomScene(seed);
      const model = modelOf(scene, start(scene));
      const n = model.unknowns;
      const next = numbersFrom(seed);
      const q = Float64Array.from({ length: n }, () => (next() - 0.6) * 1e-2);
      const matrix = new Float64Array(n * n);
      tangent(model, q, matrix, n);
      const [up, down] = [new Float64Array(n), new Float64Array(n)];
      const h = 1e-8;
      for (let j = 0; j < n; j++) {
        const [a, b] = [Float64Array.from(q), Float64Array.from(q)];
        a[j] = (a[j] ?? 0) + h;
        b[j] = (b[j] ?? 0) - h;
        residual(model, a, up);
        residual(model, b, down);
        for (let i = 0; i < n; i++) {
          const slope = ((up[i] ?? 0) - (down[i] ?? 0)) / (2 * h);
          const mine = matrix[i * n + j] ?? Number.NaN;
          expect(Math.abs(mine - slope)).toBeLessThanOrEqual(1e-5 * model.stiffest + 1e-3 * Math.abs(slope));
          if (Math.abs(slope) > 1) compared++;
        }
      }
    }),
    { numRuns: 60, endOnFailure: true },
  );
  expect(compared).toBeGreaterThan(1000);
});
