/**
 * Rigid bodies that rest on one-way springs, and on each other.
 *
 * Assumes: bodies are rigid; they move by sinking and by small tilts; contacts push and never pull; nothing
 * moves sideways; nothing is moving fast. Plan axes, SI.
 */
export interface RestingSystem {
  readonly bodies: readonly RestingBody[];
  readonly springs: readonly Spring[];
}

/** A rigid body with its weight. */
export interface RestingBody {
  readonly id: string;
  /** N, with whatever else weighs on it. */
  readonly weight: number;
  /** Center of gravity, m. */
  readonly x: number;
  /** m */
  readonly y: number;
}

/** One place where a body is held up, by the ground or by another body. */
export interface Spring {
  readonly id: string;
  readonly upper: string;
  readonly lower: string | 'ground';
  /** Where it acts, plan axes, m. */
  readonly x: number;
  /** m */
  readonly y: number;
  /** N/m, above zero. */
  readonly stiffness: number;
}

/**
 * What a contact remembers. A support placed under a body that already rests starts at its preload, and shares
 * only what changes afterward.
 */
export interface Memory {
  /** N, at the moment of placing: from a wedge or a pump. */
  readonly preload: number;
  /** Closing of the contact at the moment of placing, m. Zero for what carried the body from the start. */
  readonly closing: number;
}

/** How a body that is not held begins to move: sinking m, and slopes along x and y. Only its direction counts. */
export interface Motion {
  readonly body: string;
  readonly sinking: number;
  readonly alongX: number;
  readonly alongY: number;
}

/** How a system rests, with the closing of each spring, m; or that it falls, or that neither was found. */
export type Rest =
  /** With the closing of each spring, m. */
  (Rests & { readonly closings: Float64Array }) | Exclude<Outcome, Rests>;

/** The forces of a system that rests, N. */
export type Rests = Extract<Outcome, { readonly kind: 'rests' }>;

/** What came out: one of many that are worked out of the same system. */
export type Outcome =
  | {
      readonly kind: 'rests';
      /** N, in the order of the system's springs. Zero where the contact is open or lost. */
      readonly forces: Float64Array;
      /** Scaled sinking and slopes of the bodies: a start for the next case. */
      readonly q: Float64Array;
      /** It stands on a line or a point, like a plank on a rail: nothing keeps it from rolling off. */
      readonly balanced: boolean;
      /** `small steps` says that the usual method did not settle, and the slower one was used. */
      readonly method: 'newton' | 'small steps';
      /** Largest force left over in the equations of equilibrium, as a share of all weight. */
      readonly residual: number;
    }
  | { readonly kind: 'falls'; readonly motions: readonly Motion[] }
  /** Neither an equilibrium nor a proof that there is none was found. Never to be shown as passed. */
  | { readonly kind: 'unsolved' };
