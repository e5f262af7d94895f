/** A load on a rectangular base, m and N: where it comes down off the middle, and the size of the base. */
export interface OffMiddle {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/**
 * Share of a base that bears under a load off its middle: the part that has the load in its middle, B′ = B − 2e each way
 * (Meyerhof 1953; NAVFAC DM-7.02, chapter 4, section 2). Zero where the load is off the base.
 */
export const effectiveShare = ({ x, y, length, width }: OffMiddle): number =>
  Math.max(0, 1 - (2 * Math.abs(x)) / length) * Math.max(0, 1 - (2 * Math.abs(y)) / width);

/**
 * Greatest pressure at an edge of a stiff base, over its mean pressure: 1 + 6e/B while the load is in the kern
 * (e ≤ B/6), else 4B / (3 (B − 2e)), because nothing pulls on the side that lifts (statics of a triangle of pressure).
 * Off the middle both ways the two are multiplied, which is no less than the exact answer.
 */
export const edgeFactor = ({ x, y, length, width }: OffMiddle): number =>
  edgeOf(Math.abs(x) / length) * edgeOf(Math.abs(y) / width);

const edgeOf = (off: number): number =>
  off <= 1 / 6 ? 1 + 6 * off : off < 1 / 2 ? 4 / (3 * (1 - 2 * off)) : Number.POSITIVE_INFINITY;
