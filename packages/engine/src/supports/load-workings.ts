import type { GoverningLoad } from './governing-load.js';
import type { SupportWorkings } from './support-workings.js';

/** The supports of a plan with what each of them carries. */
export interface LoadWorkings extends SupportWorkings {
  /** By the id of the reaction (`crib/A#1`) and, for the sum of its contacts, of the support (`crib/A`). */
  readonly loads: () => ReadonlyMap<string, GoverningLoad>;
}
