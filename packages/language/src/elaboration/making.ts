import type { Policy } from '@cribwright/engine';
import type { Cast } from './cast.js';
import type { Expansion } from './expansion.js';
import type { Writing } from './writing.js';

/** Where a support is made: in the plan, or by one use of a pattern. */
export interface Making {
  readonly w: Writing;
  readonly cast: Cast;
  readonly policy: Policy;
  readonly within: Expansion;
}
