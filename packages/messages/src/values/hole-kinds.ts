import type { Calculation, Count, FigureHole, List, Message, Name, Phrase, Quantity } from './values.js';

/** What may fill a hole, by the kind that its catalog entry declares. */
export interface HoleKinds {
  /** Text that is the same in every language: a name from the plan. */
  readonly name: Name;
  readonly count: Count;
  readonly quantity: Quantity;
  readonly figure: FigureHole;
  readonly calculation: Calculation;
  readonly message: Message;
  /** A case that governs, a label: a message, a list of them, or a name. */
  readonly phrase: Phrase;
  readonly list: List;
  /** A message or a name. */
  readonly text: Message | Name;
}

/** The holes of a message that has none. */
export type NoHoles = Readonly<Record<never, never>>;
