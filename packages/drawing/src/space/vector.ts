/** A place in plan axes, m: x back from the front, y to the passenger side, z up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const at3 = (x: number, y: number, z: number): Point3 => ({ x, y, z });

export const middle = (points: readonly Point3[]): Point3 => {
  const n = points.length || 1;
  return {
    x: points.reduce((sum, p) => sum + p.x, 0) / n,
    y: points.reduce((sum, p) => sum + p.y, 0) / n,
    z: points.reduce((sum, p) => sum + p.z, 0) / n,
  };
};
