import { frictionRays } from './friction-rays.js';
import type { Push, PushStrut, PushSystem, PushTie, TieEnd, Vector } from './push-system.js';

/** One amount, not below zero, and what it puts into each equation of equilibrium. */
export interface Column {
  readonly of: string;
  readonly kind: 'contact' | 'coupling' | 'strut' | 'tie' | 'foot';
  readonly entries: readonly (readonly [row: number, amount: number])[];
}

/** A sum of amounts that may not pass a limit: a capacity, or a stack about to lean over. */
export interface Limit {
  readonly of: string;
  readonly kind: 'contact' | 'strut' | 'tie' | 'lean';
  readonly terms: readonly (readonly [column: number, amount: number])[];
  readonly most: number;
}

/** Columns × amounts + λ × push = load, in scaled numbers. Six rows a body, three a tied foot. */
export interface Program {
  readonly rows: number;
  readonly columns: readonly Column[];
  readonly limits: readonly Limit[];
  readonly push: Float64Array;
  readonly load: Float64Array;
  /** N for one unit of force; m for one unit of length. */
  readonly force: number;
  readonly length: number;
  readonly origin: Vector;
  readonly rowOf: ReadonlyMap<string, number>;
}

const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const times = (a: Vector, k: number): Vector => ({ x: a.x * k, y: a.y * k, z: a.z * k });
const size = (a: Vector): number => Math.hypot(a.x, a.y, a.z);
const toward = (from: Vector, to: Vector): Vector => times(minus(to, from), 1 / (size(minus(to, from)) || 1));

/**
 * The equations of a push, scaled to all weight and to the reach of the set-up.
 *
 * No borrowed preload: a strut that would push its body the way it is being pushed, and a tie to the ground that
 * would pull it that way, are left out. Two of them could otherwise squeeze each other for friction that nobody
 * put in.
 */
export function program(system: PushSystem, push: Push): Program {
  const places = [...system.contacts.map((c) => c.at), ...system.struts.flatMap((s) => [s.head, s.foot])];
  const origin = middle(places);
  const length = Math.max(...places.map((p) => size(minus(p, origin))), 1e-9);
  const force = system.bodies.reduce((sum, b) => sum + b.weight, 0) || 1;
  const against = times(push.direction, -1);
  const struts = system.struts.filter((s) => resists(toward(s.foot, s.head), push) && s.capacity > 0);
  const tied = struts.filter((s) => system.ties.some((t) => isAtFoot(t, s.id)));
  const rowOf = new Map(system.bodies.map((b, i) => [b.id, 6 * i]));
  tied.forEach((s, i) => {
    rowOf.set(footOf(s.id), 6 * system.bodies.length + 3 * i);
  });
  const rows = 6 * system.bodies.length + 3 * tied.length;
  const onBody = (body: string, at: Vector, f: Vector): [number, number][] => {
    const row = rowOf.get(body);
    if (row === undefined) return [];
    const r = times(minus(at, origin), 1 / length);
    return sparse(row, [f.x, f.y, f.z, r.y * f.z - r.z * f.y, r.z * f.x - r.x * f.z, r.x * f.y - r.y * f.x]);
  };
  const onFoot = (strut: string, f: Vector): [number, number][] => {
    const row = rowOf.get(footOf(strut));
    return row === undefined ? [] : sparse(row, [f.x, f.y, f.z]);
  };
  const columns: Column[] = [];
  const limits: Limit[] = [];
  const contactColumns = new Map<string, readonly { column: number; ray: Vector }[]>();
  for (const c of system.contacts) {
    const rays = frictionRays(c, against).map((ray) => ({
      column: columns.length,
      ray,
      push: columns.push({
        of: c.id,
        kind: 'contact',
        entries: [...onBody(c.upper, c.at, ray), ...onBody(c.lower, c.at, times(ray, -1))],
      }),
    }));
    contactColumns.set(c.id, rays);
    if (c.coupled === true)
      for (const f of level)
        columns.push({
          of: c.id,
          kind: 'coupling',
          entries: [...onBody(c.upper, c.at, f), ...onBody(c.lower, c.at, times(f, -1))],
        });
    if (c.capacity !== undefined)
      limits.push({
        of: c.id,
        kind: 'contact',
        terms: rays.map((r) => [r.column, 1]),
        most: c.capacity / force,
      });
  }
  for (const s of system.stacks) limits.push(...leaning(s, system, contactColumns, length));
  for (const s of struts) {
    const along = toward(s.foot, s.head);
    if (!tied.includes(s) && !frictionHolds(s, along)) continue;
    limits.push({ of: s.id, kind: 'strut', terms: [[columns.length, 1]], most: s.capacity / force });
    columns.push({
      of: s.id,
      kind: 'strut',
      entries: [...onBody(s.body, s.head, along), ...onFoot(s.id, times(along, -1))],
    });
  }
  for (const s of tied)
    for (const ray of frictionRays({ friction: s.footFriction }, minus(s.head, s.foot)))
      columns.push({ of: s.id, kind: 'foot', entries: onFoot(s.id, ray) });
  for (const t of system.ties) {
    const [a, b] = [endAt(t.from, system), endAt(t.to, system)];
    if (a === undefined || b === undefined || !(t.rating > 0) || borrows(t, a, b, push)) continue;
    if ([t.from, t.to].some((e) => e.kind === 'foot' && !rowOf.has(footOf(e.strut)))) continue;
    const pull = toward(a, b);
    const put = (e: TieEnd, at: Vector, f: Vector) =>
      e.kind === 'body' ? onBody(e.body, at, f) : e.kind === 'foot' ? onFoot(e.strut, f) : [];
    limits.push({ of: t.id, kind: 'tie', terms: [[columns.length, 1]], most: t.rating / force });
    columns.push({
      of: t.id,
      kind: 'tie',
      entries: [...put(t.from, a, pull), ...put(t.to, b, times(pull, -1))],
    });
  }
  const frame = { rows, force, length, origin, rowOf };
  return { ...frame, columns, limits, ...forcesOf(system, push, frame) };
}

type Frame = Pick<Program, 'rows' | 'force' | 'length' | 'origin' | 'rowOf'>;

/** Load and push in the frame of a program: all that changes from one corner of the ranges to the next. */
export function forcesOf(
  system: PushSystem,
  push: Push,
  { rows, force, length, origin, rowOf }: Frame,
): Pick<Program, 'load' | 'push'> {
  const load = new Float64Array(rows);
  const pushed = new Float64Array(rows);
  const add = (to: Float64Array, body: string, at: Vector, f: Vector, sign: number) => {
    const row = rowOf.get(body);
    if (row === undefined) return;
    const r = times(minus(at, origin), 1 / length);
    const all = [f.x, f.y, f.z, r.y * f.z - r.z * f.y, r.z * f.x - r.x * f.z, r.x * f.y - r.y * f.x];
    for (const [i, v] of all.entries()) to[row + i] = (to[row + i] ?? 0) + sign * v;
  };
  for (const b of system.bodies) add(load, b.id, b.centre, times(system.gravity, b.weight / force), -1);
  for (const l of system.loads) add(load, l.body, l.at, times(l.force, 1 / force), -1);
  add(pushed, push.body, push.at, push.direction, 1);
  return { load, push: pushed };
}

const level: readonly Vector[] = [
  { x: 1, y: 0, z: 0 },
  { x: -1, y: 0, z: 0 },
  { x: 0, y: 1, z: 0 },
  { x: 0, y: -1, z: 0 },
];

const footOf = (strut: string): string => `${strut} foot`;

const isAtFoot = (t: PushTie, strut: string): boolean =>
  [t.from, t.to].some((e) => e.kind === 'foot' && e.strut === strut);

const resists = (on: Vector, push: Push): boolean =>
  on.x * push.direction.x + on.y * push.direction.y <= 1e-9;

/** A foot without a tie: thrust inside the friction cone, cos θ ≤ μ sin θ. */
const frictionHolds = (s: PushStrut, along: Vector): boolean =>
  Math.hypot(along.x, along.y) <= s.footFriction * along.z * (1 + 1e-12);

/** A tie from a body to the ground that would pull it the way it is pushed hangs slack. */
function borrows(t: PushTie, a: Vector, b: Vector, push: Push): boolean {
  if (t.from.kind === 'body' && t.to.kind === 'ground') return !resists(toward(a, b), push);
  if (t.to.kind === 'body' && t.from.kind === 'ground') return !resists(toward(b, a), push);
  return false;
}

function endAt(end: TieEnd, system: PushSystem): Vector | undefined {
  return end.kind === 'foot' ? system.struts.find((s) => s.id === end.strut)?.foot : end.at;
}

/** Moments about each outer line of the base: what presses down inside it against what pushes over its top. */
function leaning(
  stack: PushSystem['stacks'][number],
  system: PushSystem,
  columns: ReadonlyMap<string, readonly { column: number; ray: Vector }[]>,
  length: number,
): readonly Limit[] {
  const own = stack.contacts.flatMap((id) => {
    const contact = system.contacts.find((c) => c.id === id);
    return contact === undefined ? [] : [{ contact, rays: columns.get(id) ?? [] }];
  });
  return (['x', 'y'] as const).flatMap((axis) =>
    stack.base[axis].map((edge, side): Limit => {
      const sign = side === 0 ? 1 : -1;
      return {
        of: stack.id,
        kind: 'lean',
        terms: own.flatMap(({ contact, rays }) =>
          rays.map(({ column, ray }) => {
            const inside = sign * (contact.at[axis] - edge);
            // The body pushes the top with −ray; that turns the stack over the edge on the low side for ray > 0.
            return [column, (sign * ray[axis] * stack.height - inside) / length] as const;
          }),
        ),
        most: 0,
      };
    }),
  );
}

const sparse = (row: number, values: readonly number[]): [number, number][] =>
  values.flatMap((v, i): [number, number][] => (v === 0 ? [] : [[row + i, v]]));

function middle(places: readonly Vector[]): Vector {
  const mid = (of: (p: Vector) => number) =>
    places.length === 0 ? 0 : (Math.min(...places.map(of)) + Math.max(...places.map(of))) / 2;
  return { x: mid((p) => p.x), y: mid((p) => p.y), z: mid((p) => p.z) };
}
