import fc from 'fast-check';
import { fcnnlsVector } from 'ml-fcnnls';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { unheldBy } from './nearest-hold.js';

const norm = (v: ArrayLike<number>) => Math.hypot(...Array.from(v));
const dot = (a: ArrayLike<number>, b: ArrayLike<number>) =>
  Array.from(a).reduce((s, x, i) => s + x * (b[i] ?? Number.NaN), 0);

const number = fc.integer({ min: -20, max: 20 }).map((n) => n / 10);
const cases = fc.integer({ min: 1, max: 5 }).chain((rows) => {
  const vector = fc.array(number, { minLength: rows, maxLength: rows });
  return fc.record({ columns: fc.array(vector, { minLength: 1, maxLength: 9 }), load: vector });
});

/** ml-fcnnls gives up on some degenerate cases. */
function byLibrary(columns: readonly (readonly number[])[], load: readonly number[]) {
  try {
    const matrix = new Matrix(load.map((_, r) => columns.map((c) => c[r] ?? 0)));
    return fcnnlsVector(matrix, [...load]).K.to1DArray();
  } catch {
    return undefined;
  }
}

describe('what forces that only push leave over', () => {
  it('is nothing where they hold the load', () => {
    const left = unheldBy([Float64Array.of(1, 0), Float64Array.of(1, 1)], Float64Array.of(3, 2));
    expect(norm(left ?? [1])).toBeLessThan(1e-12);
  });

  it('is what stands across from all of them where they do not', () => {
    const left = unheldBy([Float64Array.of(1, 0), Float64Array.of(1, 1)], Float64Array.of(1, -2));
    expect([...(left ?? [])].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([0, -2]);
  });

  it('makes no column work forward, and is no longer than what ml-fcnnls leaves', () => {
    let compared = 0;
    fc.assert(
      fc.property(cases, ({ columns, load }) => {
        const left = unheldBy(
          columns.map((c) => Float64Array.from(c)),
          Float64Array.from(load),
        );
        if (left === undefined) throw new Error('It did not end.');
        for (const c of columns) expect(dot(c, left)).toBeLessThan(1e-7 * (1 + norm(load)));
        const amounts = byLibrary(columns, load);
        if (amounts === undefined) return;
        compared++;
        const others = load.map(
          (l, r) => l - columns.reduce((s, c, i) => s + (c[r] ?? 0) * (amounts[i] ?? 0), 0),
        );
        expect(norm(left)).toBeLessThan(norm(others) + 1e-6);
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(150);
  });
});
