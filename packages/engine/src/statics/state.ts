import type { Scene, Vector } from './scene.js';

/** Whether something is there: not yet placed, there, or lost. */
export type Presence = 'waiting' | 'there' | 'lost';

/**
 * What a scene remembers: how far everything has moved, where each support was when it was placed, and the friction
 * that is in it. Rows are in the order of the scene. Plain data: it can be kept, copied and compared.
 */
export interface State {
  readonly bodies: readonly BodyState[];
  readonly feet: readonly FootState[];
  readonly contacts: readonly ContactState[];
  readonly struts: readonly AxialState[];
  readonly ties: readonly AxialState[];
}

/** How far a body has moved and turned. */
export interface BodyState {
  readonly presence: Presence;
  /** m, of the center of gravity, since the start. */
  readonly moved: Vector;
  /** rad about the axes, small. */
  readonly turned: Vector;
}

/** How far a foot has moved, m. */
export interface FootState {
  readonly presence: Presence;
  readonly moved: Vector;
}

/** Where a contact was when it was placed, and the friction in it. */
export interface ContactState {
  readonly presence: Presence;
  /** m: its closing when it was placed. Only what it has closed since counts. */
  readonly zero: number;
  /** m across the normal, when friction was last taken note of. */
  readonly slip: Vector;
  /** N of friction on the upper one then. */
  readonly friction: Vector;
}

/** Where a strut or a tie was when it was placed. */
export interface AxialState {
  readonly presence: Presence;
  /** m: its shortening (a strut) or stretching (a tie) when it was placed. */
  readonly zero: number;
}

const still: Vector = { x: 0, y: 0, z: 0 };

/**
 * The scene before any weight has come onto it.
 *
 * @param waiting ids of bodies, feet and elements that are not yet there. What acts on something that waits, waits
 * with it.
 */
export function start(scene: Scene, waiting: Iterable<string> = []): State {
  const later = new Set(waiting);
  const presence = (id: string): Presence => (later.has(id) ? 'waiting' : 'there');
  const axial = ({ id }: { readonly id: string }): AxialState => ({ presence: presence(id), zero: 0 });
  return {
    bodies: scene.bodies.map((b) => ({ presence: presence(b.id), moved: still, turned: still })),
    feet: scene.feet.map((f) => ({ presence: presence(f.id), moved: still })),
    contacts: scene.contacts.map((c) => ({
      presence: presence(c.id),
      zero: 0,
      slip: still,
      friction: still,
    })),
    struts: scene.struts.map(axial),
    ties: scene.ties.map(axial),
  };
}
