import type { LinearProgram } from '../linear-program/linear-program.js';
import type { Frame } from './column-builder.js';

/** A sum of amounts that may not pass a limit: a capacity, or a stack about to lean over. */
export interface Limit {
  readonly of: string;
  readonly kind: 'contact' | 'strut' | 'tie' | 'lean';
  /** Scaled. */
  readonly most: number;
}

/**
 * The equations of a push, scaled to all weight and to the reach of the system: columns × amounts + λ × push = load.
 * Six rows a body, three a tied foot; then one for each limit; then one that bounds λ.
 */
export interface Program extends Frame {
  readonly lp: LinearProgram;
  /** How many equations there are. */
  readonly rows: number;
  readonly limits: readonly Limit[];
  /** N for one unit of force. */
  readonly force: number;
}
