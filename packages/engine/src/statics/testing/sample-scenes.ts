import { inOneGo } from '../../stepwise/stepwise.js';
import type { Forces } from '../forces.js';
import type { Outcome, Rests } from '../outcome.js';
import { type Held, push } from '../push.js';
import type { Body, Contact, End, Foot, Holder, Scene, Strut, Tie, Vector } from '../scene.js';
import { settle } from '../settle.js';
import { type State, start } from '../state.js';

export const at = (x: number, y: number, z: number): Vector => ({ x, y, z });
export const up = at(0, 0, 1);
export const ground: Holder = { kind: 'ground' };
export const onBody = (id = 'body'): Holder => ({ kind: 'body', id });
export const onFoot = (id: string): Holder => ({ kind: 'foot', id });
export const degrees = (angle: number): number => (angle * Math.PI) / 180;
/** A level direction, from +x toward +y. */
export const toward = (angle: number): Vector => at(Math.cos(degrees(angle)), Math.sin(degrees(angle)), 0);
/** Gravity on a grade that drops toward -x. */
export const grade = (angle: number): Vector => at(-Math.sin(degrees(angle)), 0, -Math.cos(degrees(angle)));

export const sceneOf = (parts: Partial<Scene>): Scene => ({
  bodies: [],
  feet: [],
  contacts: [],
  struts: [],
  ties: [],
  loads: [],
  gravity: at(0, 0, -1),
  movementLimit: 0.3,
  ...parts,
});

export const body = (weight: number, center: Vector, id = 'body'): Body => ({ id, weight, center });
export const foot = (id: string, place: Vector, weight = 50): Foot => ({ id, at: place, weight });

/** A contact of timber on hard ground; what differs is said. */
export const contact = (id: string, place: Vector, parts: Partial<Contact> = {}): Contact => ({
  id,
  upper: onBody(),
  lower: ground,
  at: place,
  normal: up,
  friction: 0.4,
  stiffness: 1e7,
  shearStiffness: 5e6,
  ...parts,
});

export const footContact = (
  id: string,
  place: Vector,
  friction: number,
  parts: Partial<Contact> = {},
): Contact => contact(`under ${id}`, place, { upper: onFoot(id), friction, ...parts });

export const end = (on: Holder, place: Vector): End => ({ on, at: place });
export const strut = (id: string, head: End, base: End, parts: Partial<Strut> = {}): Strut => ({
  id,
  head,
  foot: base,
  stiffness: 1e7,
  ...parts,
});
export const tie = (id: string, from: End, to: End, parts: Partial<Tie> = {}): Tie => ({
  id,
  from,
  to,
  stiffness: 1e6,
  ...parts,
});

/** A block on its four corners: x from 0 to `length`, y about 0. */
export const block = (
  { length, width, height }: { readonly length: number; readonly width: number; readonly height: number },
  friction: number,
  weight = 1e5,
): Scene =>
  sceneOf({
    bodies: [body(weight, at(length / 2, 0, height / 2))],
    contacts: [0, length].flatMap((x) =>
      [-width / 2, width / 2].map((y) => contact(`${x} ${y}`, at(x, y, 0), { friction })),
    ),
  });

export const outcomeOf = (scene: Scene, state: State = start(scene)): Outcome =>
  inOneGo(settle(scene, state));

/** @throws where it does not rest. */
export function atRest(scene: Scene, state: State = start(scene)): Rests {
  const outcome = outcomeOf(scene, state);
  if (outcome.kind !== 'rests') throw new Error(`expected rest: ${JSON.stringify(outcome)}`);
  return outcome;
}

/** @throws where it does not rest, or the push has no answer. */
export function heldBy(scene: Scene, place: Vector, direction: Vector, id = 'body', state?: State): Held {
  const from = atRest(scene, state).state;
  const result = inOneGo(push(scene, from, { body: id, at: place, direction }));
  if (result.kind !== 'held') throw new Error(`expected a push: ${JSON.stringify(result)}`);
  return result;
}

/** N along the element. @throws where it is not there. */
export function carriedBy(forces: Forces, id: string): number {
  const found =
    forces.contacts.find((c) => c.id === id)?.normal ??
    [...forces.struts, ...forces.ties].find((e) => e.id === id)?.force;
  if (found === undefined) throw new Error(`${id} is not there`);
  return found;
}

/** N of friction on the upper one. @throws where it is not there. */
export function frictionAt(forces: Forces, id: string): Vector {
  const found = forces.contacts.find((c) => c.id === id)?.friction;
  if (found === undefined) throw new Error(`${id} is not there`);
  return found;
}
