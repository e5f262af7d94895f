import { limitRows } from '../linear-program/limit-rows.js';
import type { LinearProgram } from '../linear-program/linear-program.js';
import type { Vector } from '../space/vectors.js';
import { middle, minus, size, times, toward } from '../space/vectors.js';
import {
  armOf,
  type ColumnBuilder,
  columnBuilder,
  endColumn,
  type Frame,
  footOf,
  put,
  putOnBody,
  putOnFoot,
  rowsOf,
} from './column-builder.js';
import { frictionRays, raysAgainst } from './friction-rays.js';
import { borrows, endAt, isAtFoot, resists } from './no-borrowed-preload.js';
import { fillForces, pushEntries } from './program-forces.js';
import type { Limit, Program } from './push-program.js';
import type { Push, PushContact, PushStrut, PushSystem, PushTie, TieEnd } from './push-system.js';

/** Which struts and ties a push may count on. */
export type Counted = 'resisting' | 'all';

/** More than this share of all weight is not looked for. */
const mostLookedFor = 10;

/**
 * @param counted `resisting`: no borrowed preload. A strut that would push its body the way it is being pushed, and a
 * tie to the ground that would pull it that way, are left out. Two of them could otherwise squeeze each other for
 * friction that nobody put in. `all`: every strut and tie, which is a bound from above and no more.
 */
export function program(system: PushSystem, push: Push, counted: Counted = 'resisting'): Program {
  const places = [...system.contacts.map((c) => c.at), ...system.struts.flatMap((s) => [s.head, s.foot])];
  const origin = middle(places);
  const length = Math.max(...places.map((p) => size(minus(p, origin))), 1e-9);
  const force = system.bodies.reduce((sum, b) => sum + b.weight, 0) || 1;
  const struts = system.struts.filter(
    (s) => (counted === 'all' || resists(toward(s.foot, s.head), push)) && s.capacity > 0,
  );
  const tied = struts.filter((s) => system.ties.some((t) => isAtFoot(t, s.id)));
  const rowOf = new Map(system.bodies.map((b, i) => [b.id, 6 * i]));
  tied.forEach((s, i) => {
    rowOf.set(footOf(s.id), 6 * system.bodies.length + 3 * i);
  });
  const rows = 6 * system.bodies.length + 3 * tied.length;
  const build: Build = {
    to: columnBuilder(12 * system.contacts.length + 9 * struts.length + system.ties.length + 1, 4096),
    frame: { origin, length, rowOf },
    rows,
    force,
    limits: [],
  };
  addContacts(build, system, times(push.direction, -1));
  for (const s of struts) addStrut(build, s, tied.includes(s));
  for (const s of tied)
    for (const ray of frictionRays({ friction: s.footFriction }, raysAgainst(minus(s.head, s.foot)))) {
      putOnFoot(build.to, rowsOf(build.frame, footOf(s.id)), ray);
      endColumn(build.to);
    }
  for (const t of system.ties) addTie(build, t, system, counted === 'all' ? undefined : push);
  const { to, limits } = build;
  const objective = to.columns;
  // Room for the push; what stands in it comes with the forces. Its bound stays.
  for (let e = 0; e < pushEntries; e++) put(to, 0, Number.NaN);
  put(to, rows + limits.length, 1);
  endColumn(to);
  const right = new Float64Array(rows + limits.length + 1);
  limits.forEach((limit, l) => {
    right[rows + l] = limit.most;
  });
  right[rows + limits.length] = mostLookedFor;
  const columns = {
    equalities: rows,
    count: to.columns,
    starts: to.starts.subarray(0, to.columns + 1),
    rows: to.rows.subarray(0, to.entries),
    values: to.values.subarray(0, to.entries),
    objective,
    right,
  };
  const lp: LinearProgram = { ...columns, limits: limitRows(columns) };
  const p = { lp, rows, limits, force, origin, length, rowOf };
  fillForces(p, system, push);
  return p;
}

interface Build {
  readonly to: ColumnBuilder;
  readonly frame: Frame;
  readonly rows: number;
  readonly force: number;
  readonly limits: Limit[];
}

/** Adds a limit. Returns its row. */
function limited({ rows, limits }: Build, limit: Limit): number {
  limits.push(limit);
  return rows + limits.length - 1;
}

function addContacts(build: Build, system: PushSystem, against: Vector): void {
  const { to, frame, force } = build;
  const directions = raysAgainst(against);
  const leans = system.stacks.flatMap((stack) => leaning(build, stack));
  for (const c of system.contacts) {
    const full =
      c.capacity === undefined
        ? undefined
        : limited(build, { of: c.id, kind: 'contact', most: c.capacity / force });
    const own = leans.filter((l) => l.contacts.includes(c.id));
    const [upper, lower, arm] = [rowsOf(frame, c.upper), rowsOf(frame, c.lower), armOf(frame, c.at)];
    for (const ray of frictionRays(c, directions)) {
      putOnBody(to, upper, arm, ray);
      putOnBody(to, lower, arm, ray, -1);
      if (full !== undefined) put(to, full, 1);
      for (const lean of own) put(to, lean.row, lean.of(c, ray));
      endColumn(to);
    }
    if (c.coupled !== true) continue;
    for (const f of level) {
      putOnBody(to, upper, arm, f);
      putOnBody(to, lower, arm, f, -1);
      endColumn(to);
    }
  }
}

/** Moments about each outer line of the base: what presses down inside it against what pushes over its top. */
const leaning = (build: Build, stack: PushSystem['stacks'][number]) =>
  (['x', 'y'] as const).flatMap((axis) =>
    stack.base[axis].map((edge, side) => {
      const sign = side === 0 ? 1 : -1;
      return {
        contacts: stack.contacts,
        row: limited(build, { of: stack.id, kind: 'lean', most: 0 }),
        // The body pushes the top with −ray; that turns the stack over the edge on the low side for ray > 0.
        of: (c: PushContact, ray: Vector) =>
          (sign * ray[axis] * stack.height - sign * (c.at[axis] - edge)) / build.frame.length,
      };
    }),
  );

function addStrut(build: Build, s: PushStrut, tied: boolean): void {
  const along = toward(s.foot, s.head);
  if (!tied && !frictionHolds(s, along)) return;
  const { to, frame } = build;
  putOnBody(to, rowsOf(frame, s.body), armOf(frame, s.head), along);
  if (tied) putOnFoot(to, rowsOf(frame, footOf(s.id)), along, -1);
  put(to, limited(build, { of: s.id, kind: 'strut', most: s.capacity / build.force }), 1);
  endColumn(to);
}

function addTie(build: Build, t: PushTie, system: PushSystem, push: Push | undefined): void {
  const { to, frame } = build;
  const [a, b] = [endAt(t.from, system), endAt(t.to, system)];
  if (a === undefined || b === undefined || !(t.rating > 0)) return;
  if (push !== undefined && borrows(t, a, b, push)) return;
  if ([t.from, t.to].some((e) => e.kind === 'foot' && !frame.rowOf.has(footOf(e.strut)))) return;
  const pull = toward(a, b);
  const pulls = (e: TieEnd, place: Vector, sign: number) => {
    if (e.kind === 'body') putOnBody(to, rowsOf(frame, e.body), armOf(frame, place), pull, sign);
    if (e.kind === 'foot') putOnFoot(to, rowsOf(frame, footOf(e.strut)), pull, sign);
  };
  pulls(t.from, a, 1);
  pulls(t.to, b, -1);
  put(to, limited(build, { of: t.id, kind: 'tie', most: t.rating / build.force }), 1);
  endColumn(to);
}

const level: readonly Vector[] = [
  { x: 1, y: 0, z: 0 },
  { x: -1, y: 0, z: 0 },
  { x: 0, y: 1, z: 0 },
  { x: 0, y: -1, z: 0 },
];

/** A foot without a tie: thrust inside the friction cone, cos θ ≤ μ sin θ. */
const frictionHolds = (s: PushStrut, along: Vector): boolean =>
  Math.hypot(along.x, along.y) <= s.footFriction * along.z * (1 + 1e-12);
