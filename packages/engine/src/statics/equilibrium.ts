import type { Forces } from './forces.js';
import type { Holder, Load, Scene, Vector } from './scene.js';
import type { State } from './state.js';

/**
 * How far a scene is from balance, summed anew from the forces of its elements. It shares nothing with the solver:
 * not its scaling, not its unknowns, not its derivative. Moments are taken about the origin for the whole, and about
 * the center of gravity for each body.
 */
export interface Imbalance {
  /** N: the greatest of all bodies, feet, and the whole scene against the ground. */
  readonly force: number;
  /** N·m. */
  readonly moment: number;
  /** N by which a force is not allowed: pulling where it may only push, friction outside its cone. */
  readonly inadmissible: number;
}

/** A force that acts somewhere on something. */
interface Action {
  readonly on: Holder;
  readonly at: Vector;
  readonly force: Vector;
}

/**
 * How far forces are out of balance with the loads of a scene, N and N·m, and how far they are not allowed. Summed
 * apart from the solver.
 *
 * @param extra loads on top of those of the scene: a push
 */
export function imbalanceOf(
  scene: Scene,
  state: State,
  forces: Forces,
  extra: readonly Load[] = [],
): Imbalance {
  const actions = actionsOf(scene, state, forces, extra);
  let force = 0;
  let moment = 0;
  const note = (f: Vector, m: Vector) => {
    force = Math.max(force, Math.hypot(f.x, f.y, f.z));
    moment = Math.max(moment, Math.hypot(m.x, m.y, m.z));
  };
  const onBodies = new Map<string, Action[]>();
  const onFeet = new Map<string, Action[]>();
  for (const a of actions) {
    if (a.on.kind === 'ground') continue;
    const by = a.on.kind === 'body' ? onBodies : onFeet;
    const before = by.get(a.on.id);
    if (before === undefined) by.set(a.on.id, [a]);
    else before.push(a);
  }
  for (const [i, b] of scene.bodies.entries()) {
    if (state.bodies[i]?.presence !== 'there') continue;
    const mine = onBodies.get(b.id) ?? [];
    note(sumOfForces(mine), sumOfMoments(mine, b.center));
  }
  for (const [i, f] of scene.feet.entries()) {
    if (state.feet[i]?.presence !== 'there') continue;
    note(sumOfForces(onFeet.get(f.id) ?? []), nothing);
  }
  note(sumOfForces(actions), sumOfMoments(actions, nothing));
  return { force, moment, inadmissible: worstInadmissible(scene, forces) };
}

const nothing: Vector = { x: 0, y: 0, z: 0 };

function actionsOf(scene: Scene, state: State, forces: Forces, extra: readonly Load[]): readonly Action[] {
  const actions: Action[] = [];
  const there = {
    body: new Set(scene.bodies.filter((_, i) => state.bodies[i]?.presence === 'there').map((b) => b.id)),
    foot: new Set(scene.feet.filter((_, i) => state.feet[i]?.presence === 'there').map((f) => f.id)),
  };
  // The ground carries what comes, and needs no balance.
  const counts = (on: Holder): boolean => on.kind !== 'ground' && there[on.kind].has(on.id);
  const put = (on: Holder, at: Vector, force: Vector) => {
    if (counts(on)) actions.push({ on, at, force });
  };
  const weigh = (on: Holder, at: Vector, weight: number) =>
    put(on, at, { x: scene.gravity.x * weight, y: scene.gravity.y * weight, z: scene.gravity.z * weight });
  for (const b of scene.bodies) weigh({ kind: 'body', id: b.id }, b.center, b.weight);
  for (const f of scene.feet) weigh({ kind: 'foot', id: f.id }, f.at, f.weight);
  for (const l of [...scene.loads, ...extra]) put(l.on, l.at, l.force);

  const pair = (first: Holder, firstAt: Vector, second: Holder, secondAt: Vector, f: Vector) => {
    put(first, firstAt, f);
    put(second, secondAt, { x: -f.x, y: -f.y, z: -f.z });
  };
  const contacts = new Map(scene.contacts.map((c) => [c.id, c]));
  for (const { id, normal, friction } of forces.contacts) {
    const c = contacts.get(id);
    if (c === undefined) continue;
    const f = {
      x: c.normal.x * normal + friction.x,
      y: c.normal.y * normal + friction.y,
      z: c.normal.z * normal + friction.z,
    };
    pair(c.upper, c.at, c.lower, c.at, f);
  }
  const struts = new Map(scene.struts.map((s) => [s.id, s]));
  for (const { id, force } of forces.struts) {
    const s = struts.get(id);
    if (s !== undefined)
      pair(s.head.on, s.head.at, s.foot.on, s.foot.at, toward(s.foot.at, s.head.at, force));
  }
  const ties = new Map(scene.ties.map((t) => [t.id, t]));
  for (const { id, force } of forces.ties) {
    const t = ties.get(id);
    if (t !== undefined) pair(t.from.on, t.from.at, t.to.on, t.to.at, toward(t.from.at, t.to.at, force));
  }
  return actions;
}

function toward(from: Vector, to: Vector, force: number): Vector {
  const [x, y, z] = [to.x - from.x, to.y - from.y, to.z - from.z];
  const k = force / Math.sqrt(x * x + y * y + z * z);
  return { x: x * k, y: y * k, z: z * k };
}

const sumOfForces = (of: readonly Action[]): Vector =>
  of.reduce((s, { force: f }) => ({ x: s.x + f.x, y: s.y + f.y, z: s.z + f.z }), nothing);

const sumOfMoments = (of: readonly Action[], about: Vector): Vector =>
  of.reduce((s, { at, force: f }) => {
    const [x, y, z] = [at.x - about.x, at.y - about.y, at.z - about.z];
    return { x: s.x + y * f.z - z * f.y, y: s.y + z * f.x - x * f.z, z: s.z + x * f.y - y * f.x };
  }, nothing);

function worstInadmissible(scene: Scene, forces: Forces): number {
  const contacts = new Map(scene.contacts.map((c) => [c.id, c]));
  let worst = 0;
  for (const { id, normal, friction: t } of forces.contacts) {
    const c = contacts.get(id);
    if (c === undefined) continue;
    const off = t.x * c.normal.x + t.y * c.normal.y + t.z * c.normal.z;
    worst = Math.max(worst, -normal, Math.abs(off), Math.hypot(t.x, t.y, t.z) - c.friction * normal);
    if (c.rolling === undefined) continue;
    const along = t.x * c.rolling.along.x + t.y * c.rolling.along.y + t.z * c.rolling.along.z;
    if (!c.rolling.stopsForward) worst = Math.max(worst, -along);
    if (!c.rolling.stopsBack) worst = Math.max(worst, along);
  }
  for (const { force } of [...forces.struts, ...forces.ties]) worst = Math.max(worst, -force);
  return worst;
}
