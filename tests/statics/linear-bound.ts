import type { statics } from '@cribwright/engine';
import type { LinearProgram } from '../published/linear-program.js';

type Scene = statics.Scene;
type Vector = statics.Vector;

/** What is asked of the program; nothing: whether it has any solution. */
interface Asked {
  /** As much of this push as can be. */
  readonly push?: statics.Push;
  /** No element over its rating. */
  readonly rated?: boolean;
  /** As little as can be in this element: the greatest value is then minus that. */
  readonly least?: string;
}

/**
 * The linear program of a scene: any forces of the elements that are there, inside their cones, that balance every
 * body and foot; of a push, as much as can be. Written from the scene alone: it shares nothing with the solver. The
 * friction cone has flat sides, drawn round it (`outer`) or inside it (`inner`).
 *
 * Lengths are counted from the middle of the scene in its extent, forces in its weight.
 */
export function linearProgram(
  scene: Scene,
  state: statics.State,
  cone: 'outer' | 'inner',
  asked: Asked = {},
  sides = 16,
): LinearProgram {
  const { push, rated = false, least } = asked;
  const there = <T>(of: readonly T[], rows: readonly { readonly presence: string }[]) =>
    of.filter((_, i) => rows[i]?.presence === 'there');
  const bodies = there(scene.bodies, state.bodies);
  const feet = there(scene.feet, state.feet);
  const rowOf = new Map<string, number>();
  let rows = 0;
  for (const b of bodies) {
    rowOf.set(b.id, rows);
    rows += 6;
  }
  for (const f of feet) {
    rowOf.set(f.id, rows);
    rows += 3;
  }
  const centers = new Map(bodies.map((b) => [b.id, b.center]));
  const weight = [...bodies, ...feet].reduce((sum, b) => sum + b.weight, 0);
  const length = Math.max(1, ...scene.contacts.map((c) => Math.hypot(c.at.x, c.at.y, c.at.z)));

  const put = (column: number[], on: statics.Holder, at: Vector, f: Vector, sign: number) => {
    if (on.kind === 'ground') return;
    const row = rowOf.get(on.id);
    if (row === undefined) return;
    const center = centers.get(on.id);
    const add = (k: number, v: number) => {
      column[row + k] = (column[row + k] ?? 0) + sign * v;
    };
    add(0, f.x);
    add(1, f.y);
    add(2, f.z);
    if (center === undefined) return;
    const [x, y, z] = [(at.x - center.x) / length, (at.y - center.y) / length, (at.z - center.z) / length];
    add(3, y * f.z - z * f.y);
    add(4, z * f.x - x * f.z);
    add(5, x * f.y - y * f.x);
  };
  const isThere = (on: statics.Holder) => on.kind === 'ground' || rowOf.has(on.id);
  const empty = () => Array.from({ length: rows }, () => 0);
  const columns: Column[] = [];
  let cones = 0;
  for (const c of there(scene.contacts, state.contacts)) {
    if (!isThere(c.upper) || !isThere(c.lower)) continue;
    const pair = (f: Vector) => {
      const of = empty();
      put(of, c.upper, c.at, f, 1);
      put(of, c.lower, c.at, f, -1);
      return of;
    };
    const row = cones++;
    const reach = cone === 'outer' ? 1 / Math.cos(Math.PI / sides) : 1;
    columns.push({
      id: c.id,
      of: pair(c.normal),
      cone: new Map([[row, -c.friction * reach]]),
      most: c.capacity,
    });
    for (const t of around(c, sides)) columns.push({ of: pair(t), cone: new Map([[row, 1]]) });
  }
  const axial = (a: statics.End, b: statics.End, f: Vector, id: string, most: number | undefined) => {
    if (!isThere(a.on) || !isThere(b.on)) return;
    const of = empty();
    put(of, a.on, a.at, f, 1);
    put(of, b.on, b.at, f, -1);
    columns.push({ id, of, cone: new Map(), most });
  };
  for (const s of there(scene.struts, state.struts))
    axial(s.head, s.foot, between(s.foot.at, s.head.at), s.id, s.capacity);
  for (const t of there(scene.ties, state.ties))
    axial(t.from, t.to, between(t.from.at, t.to.at), t.id, t.capacity);

  const load = empty();
  for (const b of bodies) put(load, { kind: 'body', id: b.id }, b.center, scene.gravity, b.weight / weight);
  for (const f of feet) put(load, { kind: 'foot', id: f.id }, f.at, scene.gravity, f.weight / weight);
  for (const l of scene.loads) put(load, l.on, l.at, l.force, 1 / weight);
  if (push !== undefined) {
    const of = empty();
    put(of, { kind: 'body', id: push.body }, push.at, push.direction, 1);
    columns.push({ of, cone: new Map() });
  }
  return {
    objective: columns.map((c, i) =>
      push !== undefined && i === columns.length - 1 ? 1 : least !== undefined && c.id === least ? -1 : 0,
    ),
    rows: [
      ...load.map((v, r) => ({ of: columns.map((c) => c.of[r] ?? 0), is: '=' as const, right: -v })),
      ...columns.flatMap(({ most }, i) =>
        rated && most !== undefined
          ? [{ of: columns.map((_, j) => (i === j ? 1 : 0)), is: '<=' as const, right: most / weight }]
          : [],
      ),
      // No push has no end: it is cut off where no plan comes near.
      ...(push === undefined
        ? []
        : [{ of: columns.map((_, i) => (i === columns.length - 1 ? 1 : 0)), is: '<=' as const, right: 1e4 }]),
      ...Array.from({ length: cones }, (_, r) => ({
        of: columns.map((c) => c.cone.get(r) ?? 0),
        is: '<=' as const,
        right: 0,
      })),
    ],
  };
}

interface Column {
  readonly id?: string;
  readonly of: number[];
  readonly cone: ReadonlyMap<number, number>;
  readonly most?: number | undefined;
}

function between(from: Vector, to: Vector): Vector {
  const [x, y, z] = [to.x - from.x, to.y - from.y, to.z - from.z];
  const d = Math.hypot(x, y, z);
  return { x: x / d, y: y / d, z: z / d };
}

/** Directions of friction evenly round the normal. A wheel has only those that something stops, and those across. */
function around(c: statics.Contact, sides: number): readonly Vector[] {
  const n = c.normal;
  const cross = (a: Vector, b: Vector): Vector => ({
    x: a.y * b.z - a.z * b.y,
    y: a.z * b.x - a.x * b.z,
    z: a.x * b.y - a.y * b.x,
  });
  const some: Vector = Math.abs(n.x) < 0.9 ? { x: 1, y: 0, z: 0 } : { x: 0, y: 1, z: 0 };
  const raw = c.rolling?.along ?? cross(n, some);
  const off = raw.x * n.x + raw.y * n.y + raw.z * n.z;
  const flat = { x: raw.x - off * n.x, y: raw.y - off * n.y, z: raw.z - off * n.z };
  const size = Math.hypot(flat.x, flat.y, flat.z);
  const u = { x: flat.x / size, y: flat.y / size, z: flat.z / size };
  const v = cross(n, u);
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides;
    let a = Math.cos(angle);
    const b = Math.sin(angle);
    // Friction against the motion along +u is stopped forward; what nothing stops is not there.
    if (c.rolling !== undefined && ((a < 0 && !c.rolling.stopsForward) || (a > 0 && !c.rolling.stopsBack)))
      a = 0;
    return { x: a * u.x + b * v.x, y: a * u.y + b * v.y, z: a * u.z + b * v.z };
  });
}
