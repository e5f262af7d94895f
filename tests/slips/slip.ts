/** One mistake that a beginner makes while writing the plan of `base-plan.ts`, and how it should be answered. */
export interface Slip {
  /** What was done, in the words of the trade. */
  readonly title: string;
  /** A piece of the plan, written right. It stands in the plan once, or its first place is meant. */
  readonly right: string;
  /** What was written for it, with ‹ › around the place where the error belongs. */
  readonly written: string;
  /** A part of the wanted message. */
  readonly says: string;
  /** What the fix makes of what was written: `as right`, or another text. Absent where no fix is sure. */
  readonly fixed?: string;
}

/** The fix gives back what should have been written. */
export const asRight = 'as right';

/** A form that is right, though it looks unusual: nothing is said of it. */
export interface Accepted {
  readonly title: string;
  readonly right: string;
  readonly written: string;
}

export interface Group {
  readonly name: string;
  readonly title: string;
  readonly slips: readonly Slip[];
  readonly accepted?: readonly Accepted[];
}

type Row = readonly [title: string, right: string, written: string, says: string, fixed?: string | undefined];

/** Slips in the order: what was done, what was right, what was written, what is said, what the fix makes of it. */
export const slips = (rows: readonly Row[]): readonly Slip[] =>
  rows.map(([title, right, written, says, fixed]) => ({
    title,
    right,
    written,
    says,
    ...(fixed === undefined ? {} : { fixed }),
  }));
