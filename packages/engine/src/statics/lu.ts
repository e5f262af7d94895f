/**
 * Solves `a · x = b` for a dense square matrix by elimination with partial pivoting, in place.
 *
 * @param a rows one after another; overwritten.
 * @param b overwritten by x.
 * @returns false where a pivot is zero to rounding, or not a number: then `b` holds nothing of use.
 */
export function solveDense(a: Float64Array, b: Float64Array, n: number): boolean {
  // Bodies touch few others: most of a row is zero.
  const filled = new Int32Array(n);
  for (let k = 0; k < n; k++) {
    let p = k;
    let most = Math.abs(a[k * n + k] as number);
    for (let i = k + 1; i < n; i++) {
      const v = Math.abs(a[i * n + k] as number);
      if (v > most) {
        most = v;
        p = i;
      }
    }
    if (!(most > 1e-300) || !Number.isFinite(most)) return false;
    if (p !== k) swapRows(a, b, n, k, p);
    const pivot = a[k * n + k] as number;
    let count = 0;
    for (let j = k + 1; j < n; j++) if (a[k * n + j] !== 0) filled[count++] = j;
    for (let i = k + 1; i < n; i++) {
      const factor = (a[i * n + k] as number) / pivot;
      if (factor === 0) continue;
      for (let f = 0; f < count; f++) {
        const j = filled[f] as number;
        a[i * n + j] = (a[i * n + j] as number) - factor * (a[k * n + j] as number);
      }
      b[i] = (b[i] as number) - factor * (b[k] as number);
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let j = i + 1; j < n; j++) sum -= (a[i * n + j] as number) * (b[j] as number);
    b[i] = sum / (a[i * n + i] as number);
  }
  return true;
}

function swapRows(a: Float64Array, b: Float64Array, n: number, k: number, p: number): void {
  for (let j = k; j < n; j++) {
    const v = a[k * n + j] as number;
    a[k * n + j] = a[p * n + j] as number;
    a[p * n + j] = v;
  }
  const v = b[k] as number;
  b[k] = b[p] as number;
  b[p] = v;
}
