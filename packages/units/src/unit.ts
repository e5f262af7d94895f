import type { Dimension } from './dimension.js';
import type { Factor } from './factor.js';

/** A unit that may be written in a plan or shown to a reader. */
export interface Unit {
  /** The spelling used when printing: `in`, `lb`, `deg`. Unique. */
  readonly id: string;
  readonly dimension: Dimension;
  /** Every accepted spelling, the id first. */
  readonly spellings: readonly string[];
  /** Which readers use it. */
  readonly system: 'us' | 'si' | 'both';
  /** Its size in SI. */
  readonly factor: Factor;
  /** Where the size is defined. */
  readonly source: string;
  /** The last digit that is worth printing, in this unit: 0.1 of an inch, one pound. A power of ten. */
  readonly step: number;
  /** The unit of the other system that a reader would use in its place. */
  readonly counterpart: string;
}

/** Units of the reader. */
export type System = 'us' | 'si';
