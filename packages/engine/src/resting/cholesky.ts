import { at } from './at.js';

/** A factor of a matrix, to be used again and again. */
export interface Factor {
  readonly scale: Float64Array;
  readonly l: Float64Array;
}

export const factorSpace = (n: number): Factor => ({
  scale: new Float64Array(n),
  l: new Float64Array(n * n),
});

/** A pivot this small, of a diagonal of one, holds nothing. */
const vanishing = 1e-9;

/**
 * Factors `H + shift · D`, H symmetric (its lower half is read) and not negative, D its diagonal. The work is done
 * on the matrix scaled to a unit diagonal, so that soft and stiff directions keep their digits.
 *
 * @returns how many directions H does not hold (pivots that vanish).
 */
function factorShifted(h: Float64Array, n: number, shift: number, { scale, l }: Factor): number {
  for (let i = 0; i < n; i++) scale[i] = at(h, i * n + i) > 0 ? 1 / Math.sqrt(at(h, i * n + i)) : 1;
  let free = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = at(h, i * n + j) * at(scale, i) * at(scale, j);
      if (i === j) sum += shift;
      for (let k = 0; k < j; k++) sum -= at(l, i * n + k) * at(l, j * n + k);
      if (i !== j) l[i * n + j] = sum / at(l, j * n + j);
      else {
        if (sum - shift <= vanishing) free++;
        l[i * n + i] = Math.sqrt(Math.max(sum, shift * 0.5, 1e-300));
      }
    }
  }
  return free;
}

/** Solves with a factor, in place of the right side. */
export function solveFactored({ scale, l }: Factor, r: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    let sum = at(r, i) * at(scale, i);
    for (let k = 0; k < i; k++) sum -= at(l, i * n + k) * at(r, k);
    r[i] = sum / at(l, i * n + i);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = at(r, i);
    for (let k = i + 1; k < n; k++) sum -= at(l, k * n + i) * at(r, k);
    r[i] = sum / at(l, i * n + i);
  }
  for (let i = 0; i < n; i++) r[i] = at(r, i) * at(scale, i);
}

/** Solves `(H + shift · D) s = r` in place of `r`. Returns how many directions H does not hold. */
export function solveShifted(
  h: Float64Array,
  r: Float64Array,
  n: number,
  shift: number,
  factor: Factor = factorSpace(n),
): number {
  const free = factorShifted(h, n, shift, factor);
  solveFactored(factor, r, n);
  return free;
}

/**
 * Leaves of a motion, in place, the part that H does not resist: shrinking it twice by `shift (H + shift D)⁻¹` takes
 * away what H holds.
 */
export function keepUnheld(
  h: Float64Array,
  motion: Float64Array,
  n: number,
  shift: number,
  factor: Factor,
): void {
  for (let pass = 0; pass < 2; pass++) {
    for (let i = 0; i < n; i++) motion[i] = at(motion, i) * shift * (at(h, i * n + i) || 1);
    solveShifted(h, motion, n, shift, factor);
  }
}

/**
 * Takes the shift out of a solution of `(H + shift · D) s = r`, in place: what the shift held back is solved for once
 * more. Only where H holds every direction.
 *
 * @param spare room for as many numbers as the solution has
 */
export function withoutShift(
  factor: Factor,
  solution: Float64Array,
  n: number,
  shift: number,
  spare: Float64Array,
): void {
  for (let i = 0; i < n; i++) spare[i] = (shift * at(solution, i)) / at(factor.scale, i) ** 2;
  solveFactored(factor, spare, n);
  for (let i = 0; i < n; i++) solution[i] = at(solution, i) + at(spare, i);
}
