import { linksAt } from './link-law.js';
import type { Model } from './model.js';
import type { Scene, Vector } from './scene.js';
import type { State } from './state.js';
import { times } from './vector.js';

/** What every element that is there carries, N. An element that waits or is lost has no row. */
export interface Forces {
  readonly contacts: readonly ContactForce[];
  /** Compression. */
  readonly struts: readonly AxialForce[];
  /** Tension. */
  readonly ties: readonly AxialForce[];
}

/** What a contact carries, N. */
export interface ContactForce {
  readonly id: string;
  /** Along the normal, 0 or more. */
  readonly normal: number;
  /** Friction on the upper one. */
  readonly friction: Vector;
}

/** What a strut or a tie carries along itself, N, 0 or more. */
export interface AxialForce {
  readonly id: string;
  readonly force: number;
}

/** Force over rating: a ratio. Over 1 is over the rating. */
export interface Use {
  readonly id: string;
  readonly use: number;
}

export function forcesAt(model: Model, q: Float64Array): Forces {
  const contacts: ContactForce[] = [];
  const struts: AxialForce[] = [];
  const ties: AxialForce[] = [];
  for (const { link, normal, across } of linksAt(model, q)) {
    const n = normal * model.force;
    if (link.kind === 'contact')
      contacts.push({ id: link.id, normal: n, friction: times(across, model.force) });
    else (link.kind === 'strut' ? struts : ties).push({ id: link.id, force: n });
  }
  return { contacts, struts, ties };
}

/** The state that belongs to q, of which friction was just taken note of. */
export function stateAt(model: Model, before: State, q: Float64Array): State {
  const bodies = [...before.bodies];
  const feet = [...before.feet];
  for (const m of model.members) {
    const at = (k: number): number => q[m.first + k] ?? 0;
    const moved = { x: at(0) * model.length, y: at(1) * model.length, z: at(2) * model.length };
    if (m.kind === 'body')
      bodies[m.row] = { presence: 'there', moved, turned: { x: at(3), y: at(4), z: at(5) } };
    else feet[m.row] = { presence: 'there', moved };
  }
  const contacts = [...before.contacts];
  for (const link of model.links) {
    const old = contacts[link.row];
    if (link.kind !== 'contact' || old === undefined) continue;
    contacts[link.row] = {
      ...old,
      slip: times(link.slip, model.length),
      friction: times(link.held, model.force),
    };
  }
  return { ...before, bodies, feet, contacts };
}

/** Where the state is, as unknowns. */
export function unknownsOf(model: Model, state: State): Float64Array {
  const q = new Float64Array(model.unknowns);
  for (const m of model.members) {
    const moved = (m.kind === 'body' ? state.bodies : state.feet)[m.row]?.moved;
    if (moved !== undefined)
      q.set([moved.x / model.length, moved.y / model.length, moved.z / model.length], m.first);
    const turned = m.kind === 'body' ? state.bodies[m.row]?.turned : undefined;
    if (turned !== undefined) q.set([turned.x, turned.y, turned.z], m.first + 3);
  }
  return q;
}

/** Every element that has a rating, with how much of it is used; the most used first, and by id where alike. */
export function usesOf(scene: Scene, forces: Forces): readonly Use[] {
  const force = new Map<string, number>([
    ...forces.contacts.map((c) => [c.id, c.normal] as const),
    ...forces.struts.map((s) => [s.id, s.force] as const),
    ...forces.ties.map((t) => [t.id, t.force] as const),
  ]);
  return [...scene.contacts, ...scene.struts, ...scene.ties]
    .flatMap(({ id, capacity }) => {
      const carried = force.get(id);
      return capacity === undefined || carried === undefined ? [] : [{ id, use: carried / capacity }];
    })
    .sort((a, b) => b.use - a.use || (a.id < b.id ? -1 : 1));
}

/** The first of `usesOf`, without the others. */
export function mostUsed(model: Model, q: Float64Array): Use | undefined {
  let most: Use | undefined;
  for (const { link, normal } of linksAt(model, q)) {
    if (link.capacity === Number.POSITIVE_INFINITY) continue;
    const use = normal / link.capacity;
    if (most === undefined || use > most.use || (use === most.use && link.id < most.id))
      most = { id: link.id, use };
  }
  return most;
}
