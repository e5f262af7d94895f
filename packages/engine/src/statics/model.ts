import type { End, Holder, Scene, Vector } from './scene.js';
import type { Presence, State } from './state.js';
import { cross, dot, minus, origin, plus, size, times, unit } from './vector.js';

/**
 * A scene and its state as the solver wants it: what is there, in numbers, with the total load and the extent of the
 * scene counted as 1. Solvers fail on unscaled numbers long before statics does.
 */
export interface Model {
  readonly scene: Scene;
  /** N that counts as 1. */
  readonly force: number;
  /** m that counts as 1. */
  readonly length: number;
  /** Unknowns: six for a body (moved, turned), three for a foot. */
  readonly unknowns: number;
  readonly members: readonly Member[];
  readonly links: readonly Link[];
  /** On every unknown. */
  readonly load: Float64Array;
  /** The greatest stiffness of a link, scaled. */
  readonly stiffest: number;
  readonly movementLimit: number;
}

/** A body or a foot that is there. */
export interface Member {
  readonly kind: 'body' | 'foot';
  readonly id: string;
  /** Its row in the scene. */
  readonly row: number;
  readonly at: Vector;
  /** Its first unknown. */
  readonly first: number;
}

/** The end of a link on a member, or on the ground. */
export interface LinkEnd {
  /** First unknown of the member; -1 on the ground. */
  readonly first: number;
  readonly turns: boolean;
  /** From the place of the member, scaled. */
  readonly arm: Vector;
}

/**
 * One law for contacts, struts and ties: a force along `axis` on `a`, and against it on `b`, that grows as `a` moves
 * against the axis from `b`, and is never below zero. A contact has friction across the axis as well.
 */
export interface Link {
  readonly id: string;
  readonly kind: 'contact' | 'strut' | 'tie';
  readonly row: number;
  readonly a: LinkEnd;
  readonly b: LinkEnd;
  readonly axis: Vector;
  readonly stiffness: number;
  readonly shear: number;
  readonly friction: number;
  /** Closing before it bears, counted with what it had closed when it was placed. */
  readonly open: number;
  readonly preload: number;
  readonly capacity: number;
  readonly rolling: { readonly along: Vector; readonly forward: boolean; readonly back: boolean } | undefined;
  /** Of contacts, as last taken note of: slip across the axis, and friction on `a`. */
  slip: Vector;
  held: Vector;
  /** The greatest friction, where it is taken as given while the solver looks for a way on; else below zero. */
  bound: number;
}

export function modelOf(scene: Scene, state: State): Model {
  const force = scale(
    [...scene.bodies, ...scene.feet].reduce((sum, { weight }) => sum + weight, 0) +
      scene.loads.reduce((sum, load) => sum + size(load.force), 0),
  );
  const length = scale(extent(scene));
  const members = membersOf(scene, state);
  const last = members.at(-1);
  const unknowns = last === undefined ? 0 : last.first + (last.kind === 'body' ? 6 : 3);
  const find = finder(members, length);
  const links = linksOf(scene, state, find, force, length);
  return {
    scene,
    force,
    length,
    unknowns,
    members,
    links,
    load: loadOf(scene, members, unknowns, find, force),
    stiffest: links.reduce((most, l) => Math.max(most, l.stiffness, l.shear), 1),
    movementLimit: scene.movementLimit / length,
  };
}

const scale = (value: number): number => (value > 0 && Number.isFinite(value) ? value : 1);

/** The farthest that anything is from the center of gravity of the whole. It does not change as the axes are turned. */
function extent(scene: Scene): number {
  const total = scene.bodies.reduce((sum, b) => sum + b.weight, 0) || 1;
  const center = scene.bodies.reduce((sum, b) => plus(sum, times(b.center, b.weight / total)), origin);
  const places = [
    ...scene.bodies.map((b) => b.center),
    ...scene.feet.map((f) => f.at),
    ...scene.contacts.map((c) => c.at),
    ...scene.struts.flatMap((s) => [s.head.at, s.foot.at]),
    ...scene.ties.flatMap((t) => [t.from.at, t.to.at]),
  ];
  return places.reduce((most, p) => Math.max(most, size(minus(p, center))), 0);
}

function membersOf(scene: Scene, state: State): Member[] {
  let first = 0;
  const members: Member[] = [];
  const add = (kind: Member['kind'], id: string, row: number, at: Vector, presence?: Presence) => {
    if (presence !== 'there') return;
    members.push({ kind, id, row, at, first });
    first += kind === 'body' ? 6 : 3;
  };
  for (const [row, f] of scene.feet.entries()) add('foot', f.id, row, f.at, state.feet[row]?.presence);
  for (const [row, b] of scene.bodies.entries())
    add('body', b.id, row, b.center, state.bodies[row]?.presence);
  return members;
}

/** Where an end acts; `undefined` where the member is not there. */
type Find = (on: Holder, at: Vector) => LinkEnd | undefined;

function finder(members: readonly Member[], length: number): Find {
  const byName = new Map(members.map((m) => [`${m.kind} ${m.id}`, m]));
  return (on, at) => {
    if (on.kind === 'ground') return { first: -1, turns: false, arm: origin };
    const member = byName.get(`${on.kind} ${on.id}`);
    if (member === undefined) return undefined;
    const turns = member.kind === 'body';
    return { first: member.first, turns, arm: turns ? times(minus(at, member.at), 1 / length) : origin };
  };
}

function linksOf(scene: Scene, state: State, find: Find, force: number, length: number): Link[] {
  const links: Link[] = [];
  const stiff = length / force;
  for (const [row, c] of scene.contacts.entries()) {
    const s = state.contacts[row];
    const a = find(c.upper, c.at);
    const b = find(c.lower, c.at);
    if (s?.presence !== 'there' || a === undefined || b === undefined) continue;
    const along = c.rolling && unit(minus(c.rolling.along, times(c.normal, dot(c.rolling.along, c.normal))));
    links.push({
      id: c.id,
      kind: 'contact',
      row,
      a,
      b,
      axis: c.normal,
      stiffness: c.stiffness * stiff,
      shear: c.shearStiffness * stiff,
      friction: c.friction,
      open: (s.zero + (c.gap ?? 0)) / length,
      preload: (c.preload ?? 0) / force,
      capacity: (c.capacity ?? Number.POSITIVE_INFINITY) / force,
      rolling: along && { along, forward: c.rolling.stopsForward, back: c.rolling.stopsBack },
      slip: times(s.slip, 1 / length),
      held: times(s.friction, 1 / force),
      bound: -1,
    });
  }
  const axial = (
    kind: 'strut' | 'tie',
    row: number,
    of: {
      id: string;
      from: End;
      to: End;
      stiffness: number;
      open: number;
      preload: number;
      capacity: number;
    },
    s: { readonly presence: Presence; readonly zero: number } | undefined,
  ) => {
    const a = find(of.from.on, of.from.at);
    const b = find(of.to.on, of.to.at);
    if (s?.presence !== 'there' || a === undefined || b === undefined) return;
    const pulls = unit(minus(of.to.at, of.from.at));
    links.push({
      id: of.id,
      kind,
      row,
      a,
      b,
      axis: kind === 'tie' ? pulls : times(pulls, -1),
      stiffness: of.stiffness * stiff,
      shear: 0,
      friction: 0,
      open: (s.zero + of.open) / length,
      preload: of.preload / force,
      capacity: of.capacity / force,
      rolling: undefined,
      slip: origin,
      held: origin,
      bound: -1,
    });
  };
  for (const [row, s] of scene.struts.entries())
    axial(
      'strut',
      row,
      {
        id: s.id,
        from: s.head,
        to: s.foot,
        stiffness: s.stiffness,
        open: s.gap ?? 0,
        preload: s.preload ?? 0,
        capacity: s.capacity ?? Number.POSITIVE_INFINITY,
      },
      state.struts[row],
    );
  for (const [row, t] of scene.ties.entries())
    axial(
      'tie',
      row,
      {
        id: t.id,
        from: t.from,
        to: t.to,
        stiffness: t.stiffness,
        open: t.slack ?? 0,
        preload: t.pretension ?? 0,
        capacity: t.capacity ?? Number.POSITIVE_INFINITY,
      },
      state.ties[row],
    );
  return links;
}

function loadOf(
  scene: Scene,
  members: readonly Member[],
  unknowns: number,
  find: Find,
  force: number,
): Float64Array {
  const load = new Float64Array(unknowns);
  for (const m of members) {
    const weight = (m.kind === 'body' ? scene.bodies[m.row] : scene.feet[m.row])?.weight ?? 0;
    addForce(
      load,
      { first: m.first, turns: m.kind === 'body', arm: origin },
      times(scene.gravity, weight / force),
    );
  }
  for (const l of scene.loads) {
    const end = find(l.on, l.at);
    if (end !== undefined) addForce(load, end, times(l.force, 1 / force));
  }
  return load;
}

/** Adds a force at an end to what acts on the unknowns. */
export function addForce(on: Float64Array, end: LinkEnd, f: Vector): void {
  if (end.first < 0) return;
  const put = (k: number, v: number) => {
    on[end.first + k] = (on[end.first + k] ?? 0) + v;
  };
  put(0, f.x);
  put(1, f.y);
  put(2, f.z);
  if (!end.turns) return;
  const moment = cross(end.arm, f);
  put(3, moment.x);
  put(4, moment.y);
  put(5, moment.z);
}

/** How far an end has moved. */
export function movedAt(q: Float64Array, end: LinkEnd): Vector {
  if (end.first < 0) return origin;
  const u = vectorAt(q, end.first);
  return end.turns ? plus(u, cross(vectorAt(q, end.first + 3), end.arm)) : u;
}

export const vectorAt = (q: Float64Array, first: number): Vector => ({
  x: q[first] ?? 0,
  y: q[first + 1] ?? 0,
  z: q[first + 2] ?? 0,
});
