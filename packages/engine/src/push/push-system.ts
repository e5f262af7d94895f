import type { Vector } from '../space/vectors.js';

/**
 * Rigid bodies in three dimensions that stand by contact, friction, struts and ties.
 *
 * Assumes: bodies are rigid; contacts push and never pull, with friction inside its cone; struts only push, along
 * themselves; ties only pull. A way of sharing the forces that holds means that the system can stand, not that it
 * must: dry friction gives no more than that. Plan axes, SI.
 */
export interface PushSystem {
  readonly bodies: readonly PushBody[];
  readonly contacts: readonly PushContact[];
  readonly stacks: readonly Stack[];
  readonly struts: readonly PushStrut[];
  readonly ties: readonly PushTie[];
  /** Always there: tool loads. */
  readonly loads: readonly { readonly body: string; readonly at: Vector; readonly force: Vector }[];
  /** Pull of gravity on each newton of weight: straight down, or leaning down the grade. Length 1. */
  readonly gravity: Vector;
}

/** A rigid body with the weight that acts at its center of gravity. */
export interface PushBody {
  readonly id: string;
  /** N, above zero. */
  readonly weight: number;
  /** m */
  readonly center: Vector;
}

/** A place where a body stands on the ground or on another body. */
export interface PushContact {
  readonly id: string;
  readonly upper: string;
  readonly lower: string | 'ground';
  /** m */
  readonly at: Vector;
  /** Friction over normal force: a ratio, not below zero. */
  readonly friction: number;
  /** A wheel: what keeps it from rolling either way along `along` (length 1, level). */
  readonly rolls?: { readonly along: Vector; readonly heldForward: boolean; readonly heldBack: boolean };
  /** Held sideways whatever the normal force: a coupling. */
  readonly coupled?: boolean;
  /** N. Left out, it is not what gives. */
  readonly capacity?: number;
}

/** Contacts that stand on one stack, which leans over when the force on its top points outside its base. */
export interface Stack {
  readonly id: string;
  readonly contacts: readonly string[];
  /** Height from base to top, m. */
  readonly height: number;
  /** Outer lines of the base, m. */
  readonly base: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
}

/** A strut that is locked: it pushes along itself, and its foot slides where friction and ties do not hold it. */
export interface PushStrut {
  readonly id: string;
  readonly body: string;
  /** m, as is its foot. */
  readonly head: Vector;
  readonly foot: Vector;
  /** Friction over normal force at the foot: a ratio. */
  readonly footFriction: number;
  /** Along the strut, N. Zero where it is not known. */
  readonly capacity: number;
}

/** Where a tie ends: on a body, at the foot of a strut, or at an anchor in the ground. Places in m. */
export type TieEnd =
  | { readonly kind: 'body'; readonly body: string; readonly at: Vector }
  | { readonly kind: 'foot'; readonly strut: string }
  | { readonly kind: 'ground'; readonly at: Vector };

/** A strap, chain or wire rope: it pulls, and never pushes. */
export interface PushTie {
  readonly id: string;
  readonly from: TieEnd;
  readonly to: TieEnd;
  /** Working load limit, or what an anchor holds where that is less, N. Zero where it is not known. */
  readonly rating: number;
}

/** A push to try: level, on one body at one place. */
export interface Push {
  readonly body: string;
  readonly at: Vector;
  /** Length 1, level. */
  readonly direction: Vector;
}
