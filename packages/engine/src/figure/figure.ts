import type { Dimension } from '@cribwright/units';
import type { Interval } from '../model/interval.js';
import type { Ref } from '../model/ref.js';
import type { SourceNote } from '../model/source-note.js';

/** Where a figure comes from: as its value was given, or worked out, and then it has a formula. */
export type FigureSource = SourceNote | { readonly kind: 'computed' };

/**
 * A number that a person may see. Nothing else carries numbers to the views.
 *
 * `value` is SI; `undefined` says that it is not known, which is never zero and never enough.
 */
export interface Figure {
  /** Stable within its support or finding: `height`, `heightLimit`, `capacity`, `load`, `use`. */
  readonly key: string;
  readonly label: string;
  readonly value: Interval | undefined;
  readonly dimension: Dimension;
  /** The unit it is shown in: `in`, `lb`, `deg`, `kN`. */
  readonly unit: string;
  /** Which way a printed digit may move. Capacities and limits go down, demands and heights up. */
  readonly rounding: 'up' | 'down' | 'nearest';
  readonly formula?: {
    /** `ratio × width outside to outside of contacts` */
    readonly names: string;
    /** `1.5 × 16 in` */
    readonly numbers: string;
  };
  readonly inputs: readonly Figure[];
  readonly source: FigureSource;
  /** The line that it stands on, where there is one. */
  readonly ref?: Ref;
  /** Which end of a range, or which case, gave the value. */
  readonly governs?: string;
  /** What the model behind it assumes. */
  readonly assumes?: readonly string[];
}
