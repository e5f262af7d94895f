import fc from 'fast-check';
import { expect, it } from 'vitest';
import { tangent, tangentInto } from './assemble.js';
import { BlockSystem } from './block-system.js';
import { solveDense } from './lu.js';
import { addForce, modelOf } from './model.js';
import { start } from './state.js';
import { numbersFrom, randomScene } from './testing/random-scene.js';

/** Of A x = b, how far A x is from b, as a share of the greatest product in it. */
function offBy(matrix: Float64Array, x: Float64Array, b: Float64Array): number {
  const n = b.length;
  let off = 0;
  let most = 0;
  for (let i = 0; i < n; i++) {
    let sum = -(b[i] ?? 0);
    for (let j = 0; j < n; j++) {
      const v = (matrix[i * n + j] ?? 0) * (x[j] ?? 0);
      sum += v;
      most = Math.max(most, Math.abs(v));
    }
    off = Math.max(off, Math.abs(sum));
  }
  return off / most;
}

it.each(['without', 'with'])('solves the equations of random scenes, %s a push', (kind) => {
  let solved = 0;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 - 1 }), (seed) => {
      const { scene } = randomScene(seed);
      const model = modelOf(scene, start(scene));
      const n = model.unknowns;
      const next = numbersFrom(seed);
      const q = Float64Array.from({ length: n }, () => (next() - 0.6) * 1e-3);
      const c = 1e-3 * model.stiffest;
      const pushed = kind === 'with' ? model.members.findLast((m) => m.kind === 'body') : undefined;
      const size = pushed === undefined ? n : n + 1;
      const direction = new Float64Array(n);
      if (pushed !== undefined)
        addForce(
          direction,
          { first: pushed.first, turns: true, arm: { x: 0.1, y: 0.2, z: 0.5 } },
          { x: 0.6, y: 0.8, z: 0 },
        );
      const matrix = new Float64Array(size * size);
      tangent(model, q, matrix, size);
      for (let j = 0; j < n; j++) {
        matrix[j * size + j] = (matrix[j * size + j] ?? 0) - c;
        if (pushed === undefined) continue;
        matrix[j * size + n] = direction[j] ?? 0;
        matrix[n * size + j] = model.stiffest * (direction[j] ?? 0);
      }
      const b = Float64Array.from({ length: size }, () => next() - 0.5);
      const dense = Float64Array.from(b);
      expect(solveDense(Float64Array.from(matrix), dense, size)).toBe(true);
      const blocks = new BlockSystem(model, pushed?.first);
      tangentInto(model, q, blocks);
      blocks.damp(c);
      if (pushed !== undefined) blocks.borderWith(direction, model.stiffest);
      const x = Float64Array.from(b);
      if (!blocks.solve(x)) return;
      solved++;
      expect(offBy(matrix, x, b)).toBeLessThan(Math.max(1e-9, 100 * offBy(matrix, dense, b)));
    }),
    { numRuns: 100, endOnFailure: true },
  );
  expect(solved).toBeGreaterThan(90);
});
