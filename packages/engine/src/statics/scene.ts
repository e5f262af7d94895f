/**
 * A scene of rigid bodies that stand by contact, friction, struts and ties, in space.
 *
 * Plain data in SI: N, m, N/m, rad. Axes as everywhere in the engine, z up. What the equations assume stands in
 * `README.md` beside this file.
 */
export interface Scene {
  readonly bodies: readonly Body[];
  readonly feet: readonly Foot[];
  readonly contacts: readonly Contact[];
  readonly struts: readonly Strut[];
  readonly ties: readonly Tie[];
  readonly loads: readonly Load[];
  /** Pull of gravity on each newton of weight: straight down, or leaning down the grade. Length 1. */
  readonly gravity: Vector;
  /** m. A body or a foot that has moved farther than this from where it stood has not held. */
  readonly movementLimit: number;
}

/** A place or a movement in m, a force in N or a direction without a unit; z up. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A rigid body, free to move and turn in all six ways: a vehicle, a trailer, a crib taken as a stack. */
export interface Body {
  readonly id: string;
  /** N, above zero. */
  readonly weight: number;
  /** Center of gravity. */
  readonly center: Vector;
}

/**
 * A point where a strut meets the ground or a body, free to move in three ways. Its weight is that of the base plate
 * and half the strut: a foot without weight has no friction before it is loaded, and no place of its own.
 */
export interface Foot {
  readonly id: string;
  readonly at: Vector;
  /** N, above zero. */
  readonly weight: number;
}

/** What an element acts on. */
export type Holder =
  | { readonly kind: 'ground' }
  | { readonly kind: 'body'; readonly id: string }
  | { readonly kind: 'foot'; readonly id: string };

/** A place where one thing stands on another. It pushes and never pulls, with friction inside its cone. */
export interface Contact {
  readonly id: string;
  readonly upper: Holder;
  readonly lower: Holder;
  readonly at: Vector;
  /** Length 1, from lower to upper: the way the contact pushes the upper one. */
  readonly normal: Vector;
  /** Friction over normal force, a ratio, 0 or more: the least of the surfaces that meet here. */
  readonly friction: number;
  /** N/m along the normal. */
  readonly stiffness: number;
  /** N/m across the normal, before it slips. */
  readonly shearStiffness: number;
  /** m of closing before it bears. Left out: none. */
  readonly gap?: number;
  /** N when it is placed: a driven wedge, a pumped cushion. Left out: none, the support is snug. */
  readonly preload?: number;
  readonly rolling?: Rolling;
  /** N along the normal that it is rated for. Left out: it is not what gives. */
  readonly capacity?: number;
}

/**
 * A wheel. Along `along` (length 1) friction acts only against a motion that is stopped; across, as everywhere.
 * `stopsForward` stops the upper body from moving along `along`, `stopsBack` against it: a chock, a set brake.
 */
export interface Rolling {
  readonly along: Vector;
  readonly stopsForward: boolean;
  readonly stopsBack: boolean;
}

/** One end of a strut or a tie. `at` is where it is anchored; for a foot, the place of the foot. */
export interface End {
  readonly on: Holder;
  readonly at: Vector;
}

/** Pinned at both ends: it pushes along itself and never pulls. */
export interface Strut {
  readonly id: string;
  readonly head: End;
  readonly foot: End;
  /** N/m along itself. */
  readonly stiffness: number;
  /** m of shortening before it bears. */
  readonly gap?: number;
  /** N when it is placed. */
  readonly preload?: number;
  /** N along itself at this length. */
  readonly capacity?: number;
}

/** A strap, a chain, a wire rope: it pulls along itself and never pushes. */
export interface Tie {
  readonly id: string;
  readonly from: End;
  readonly to: End;
  /** N/m along itself at this length. Webbing is soft: state where it comes from. */
  readonly stiffness: number;
  /** m of stretching before it pulls. */
  readonly slack?: number;
  /** N of tension when it is placed. */
  readonly pretension?: number;
  /** N that it is rated for. */
  readonly capacity?: number;
}

/** A force that is always there: a tool, a cable, wind. */
export interface Load {
  readonly on: Holder;
  readonly at: Vector;
  /** N. */
  readonly force: Vector;
}

/** A push to try on one body at one place, of which the size is looked for. */
export interface Push {
  readonly body: string;
  readonly at: Vector;
  /** Length 1. */
  readonly direction: Vector;
}
