import { at, indexAt } from '../resting/at.js';
import type { Vector } from '../space/vectors.js';

/** Where bodies and feet have their rows, and how lengths are scaled. */
export interface Frame {
  readonly origin: Vector;
  readonly length: number;
  readonly rowOf: ReadonlyMap<string, number>;
}

export const footOf = (strut: string): string => `${strut} foot`;

/** The row of what stands on the ground: there is none. */
export const ground = -1;

/** Where the rows of a body begin; `ground` for whatever has none. */
export const rowsOf = ({ rowOf }: Frame, name: string): number => rowOf.get(name) ?? ground;

/** A place as the arm of a force: about the origin, scaled. */
export const armOf = ({ origin, length }: Frame, place: Vector): Vector => ({
  x: (place.x - origin.x) / length,
  y: (place.y - origin.y) / length,
  z: (place.z - origin.z) / length,
});

/** Columns one after the other, as the linear program wants them. Grows as it is filled. */
export interface ColumnBuilder {
  starts: Int32Array;
  rows: Int32Array;
  values: Float64Array;
  columns: number;
  entries: number;
}

export const columnBuilder = (columns = 4, entries = 64): ColumnBuilder => ({
  starts: new Int32Array(columns + 1),
  rows: new Int32Array(entries),
  values: new Float64Array(entries),
  columns: 0,
  entries: 0,
});

const longer = <T extends Int32Array | Float64Array>(old: T, fresh: T): T => {
  fresh.set(old);
  return fresh;
};

export function put(to: ColumnBuilder, row: number, value: number): void {
  if (value === 0) return;
  if (to.entries === to.rows.length) {
    to.rows = longer(to.rows, new Int32Array(2 * to.entries + 1));
    to.values = longer(to.values, new Float64Array(2 * to.entries + 1));
  }
  to.rows[to.entries] = row;
  to.values[to.entries++] = value;
}

export function endColumn(to: ColumnBuilder): void {
  if (to.columns + 1 === to.starts.length)
    to.starts = longer(to.starts, new Int32Array(2 * to.starts.length));
  to.starts[++to.columns] = to.entries;
}

/** A force on a body: three rows of force, three of moment about the origin. Nothing on the ground. */
export function putOnBody(to: ColumnBuilder, row: number, arm: Vector, f: Vector, sign = 1): void {
  if (row === ground) return;
  put(to, row, sign * f.x);
  put(to, row + 1, sign * f.y);
  put(to, row + 2, sign * f.z);
  put(to, row + 3, sign * (arm.y * f.z - arm.z * f.y));
  put(to, row + 4, sign * (arm.z * f.x - arm.x * f.z));
  put(to, row + 5, sign * (arm.x * f.y - arm.y * f.x));
}

/** A force on the base of a tied strut. */
export function putOnFoot(to: ColumnBuilder, row: number, f: Vector, sign = 1): void {
  if (row === ground) return;
  put(to, row, sign * f.x);
  put(to, row + 1, sign * f.y);
  put(to, row + 2, sign * f.z);
}

/** Adds what was put to a right side. */
export function addTo(right: Float64Array, { rows, values, entries }: ColumnBuilder): void {
  for (let e = 0; e < entries; e++) {
    const row = indexAt(rows, e);
    right[row] = at(right, row) + at(values, e);
  }
}
