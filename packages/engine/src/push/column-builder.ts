import type { Vector } from './push-system.js';

/** Where bodies and feet have their rows, and how lengths are scaled. */
export interface Frame {
  readonly origin: Vector;
  readonly length: number;
  readonly rowOf: ReadonlyMap<string, number>;
}

export const footOf = (strut: string): string => `${strut} foot`;

/** Columns one after the other, as the linear program wants them. */
export interface ColumnBuilder {
  readonly starts: number[];
  readonly rows: number[];
  readonly values: number[];
}

export const columnBuilder = (): ColumnBuilder => ({ starts: [0], rows: [], values: [] });

export function put(to: ColumnBuilder, row: number, value: number): void {
  if (value === 0) return;
  to.rows.push(row);
  to.values.push(value);
}

/** Ends the column. Returns its number. */
export function endColumn(to: ColumnBuilder): number {
  to.starts.push(to.rows.length);
  return to.starts.length - 2;
}

/** A force on a body at a place: three rows of force, three of moment about the origin. Nothing on the ground. */
export function putOnBody(
  to: ColumnBuilder,
  { origin, length, rowOf }: Frame,
  body: string,
  at: Vector,
  f: Vector,
  sign = 1,
): void {
  const row = rowOf.get(body);
  if (row === undefined) return;
  const x = (at.x - origin.x) / length;
  const y = (at.y - origin.y) / length;
  const z = (at.z - origin.z) / length;
  put(to, row, sign * f.x);
  put(to, row + 1, sign * f.y);
  put(to, row + 2, sign * f.z);
  put(to, row + 3, sign * (y * f.z - z * f.y));
  put(to, row + 4, sign * (z * f.x - x * f.z));
  put(to, row + 5, sign * (x * f.y - y * f.x));
}

/** A force on the foot of a tied strut. */
export function putOnFoot(to: ColumnBuilder, { rowOf }: Frame, strut: string, f: Vector, sign = 1): void {
  const row = rowOf.get(footOf(strut));
  if (row === undefined) return;
  put(to, row, sign * f.x);
  put(to, row + 1, sign * f.y);
  put(to, row + 2, sign * f.z);
}
