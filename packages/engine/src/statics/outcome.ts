import type { SceneProblem } from './check-scene.js';
import type { Forces } from './forces.js';
import type { Motion } from './proof-of-falling.js';
import type { State } from './state.js';

/** What became of a scene that was let go. Reasons are ids and numbers; words are made elsewhere. */
export type Outcome = Rests | Falls | NotProven | NotSolved;

/** It came to rest, in balance within the tolerance and within the movement limit. */
export interface Rests {
  readonly kind: 'rests';
  readonly state: State;
  readonly forces: Forces;
  /** N and N·m by which the whole scene is out of balance, summed apart from the solver. */
  readonly imbalance: { readonly force: number; readonly moment: number };
  /** Feet that slid or dropped away on the way to rest, and now hold nothing. */
  readonly feetGone: readonly string[];
}

/** No forces that the supports can give hold it: there is a proof, which can be checked by hand. */
export interface Falls {
  readonly kind: 'falls';
  /** What moved past the limit, the farthest first. */
  readonly moved: readonly string[];
  readonly proof: Motion;
  readonly feetGone: readonly string[];
}

/**
 * It moved past the limit, yet some way of sharing the forces would hold it: friction that nobody has shown to be
 * there, or supports farther off than the limit. To be taken as falling.
 */
export interface NotProven {
  readonly kind: 'not proven';
  readonly moved: readonly string[];
  readonly feetGone: readonly string[];
}

/** There is no answer. Never to be taken for rest. */
export interface NotSolved {
  readonly kind: 'not solved';
  readonly reason: NotSolvedReason;
}

/** Why there is no answer: a scene that cannot be, no convergence, or forces that do not balance. */
export type NotSolvedReason =
  | { readonly kind: 'unsound scene'; readonly problems: readonly SceneProblem[] }
  | { readonly kind: 'no convergence' }
  | {
      readonly kind: 'out of balance';
      /** N */
      readonly force: number;
      /** N·m */
      readonly moment: number;
      /** N by which a force is not allowed. */
      readonly inadmissible: number;
    };
