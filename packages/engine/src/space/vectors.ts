export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const times = (a: Vector, k: number): Vector => ({ x: a.x * k, y: a.y * k, z: a.z * k });
export const size = (a: Vector): number => Math.hypot(a.x, a.y, a.z);
/** From one place toward another, length 1. */
export const toward = (from: Vector, to: Vector): Vector =>
  times(minus(to, from), 1 / (size(minus(to, from)) || 1));

/** The middle of the box round places. */
export function middle(places: readonly Vector[]): Vector {
  const mid = (of: (p: Vector) => number) =>
    places.length === 0 ? 0 : (Math.min(...places.map(of)) + Math.max(...places.map(of))) / 2;
  return { x: mid((p) => p.x), y: mid((p) => p.y), z: mid((p) => p.z) };
}

/**
 * A place in m, a force in N or a direction without a unit, in plan axes: x to the rear, y to the passenger side, z up.
 */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}
