/** A place in plan axes, m: x back from the front, y to the passenger side, z up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const at3 = (x: number, y: number, z: number): Point3 => ({ x, y, z });

export const middle = (points: readonly Point3[]): Point3 => {
  const n = points.length || 1;
  let [x, y, z] = [0, 0, 0];
  for (const p of points) {
    x += p.x;
    y += p.y;
    z += p.z;
  }
  return { x: x / n, y: y / n, z: z / n };
};
