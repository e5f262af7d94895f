import type { Figure, FigureSource, SourceNote } from '@cribwright/messages';
import { type Formula, holesOf, type Phrase } from '@cribwright/messages';
import type { Interval } from '../plan/interval.js';
import type { Ref } from '../plan/ref.js';

/** What a figure is called and how it is shown, before its value is known. */
export interface Head {
  readonly key: string;
  readonly label: Phrase;
  readonly quantity: Figure['quantity'];
  readonly rounding: Figure['rounding'];
  /** The unit that it is shown in, by its id, where that is not the usual one of its quantity. */
  readonly unit?: string | undefined;
  readonly ref?: Ref | undefined;
  readonly governs?: Phrase | undefined;
  readonly assumes?: readonly Phrase[] | undefined;
}

/** A figure under way. */
type Draft = { -readonly [K in keyof Figure]?: Figure[K] };

/** What the head says. Written out key by key: a plan of a hundred cribs has ten thousand figures. */
function settle({ key, label, quantity, rounding, unit, ref, governs, assumes }: Head) {
  const figure: Draft & Pick<Figure, 'key' | 'label' | 'quantity' | 'rounding'> = {
    key,
    label,
    quantity,
    rounding,
  };
  if (unit !== undefined) figure.unit = unit;
  if (ref !== undefined) figure.ref = ref;
  if (governs !== undefined) figure.governs = governs;
  if (assumes !== undefined) figure.assumes = assumes;
  return figure;
}

const none: readonly Figure[] = [];
const workedOut: FigureSource = { kind: 'computed' };

/** A figure that is not worked out: typed in the plan, set by policy, taken from a table. */
export const given = (head: Head, value: Interval | undefined, source: SourceNote): Figure =>
  Object.assign(settle(head), { value, inputs: none, source });

/**
 * A figure that no short calculation of other figures gives: read off the places in the plan as with a tape, or the
 * answer of a balance. `how` says between what it is measured, or what it balances; figures in its holes are inputs.
 */
export const measured = (
  head: Head,
  value: Interval | undefined,
  how: Phrase,
  source: FigureSource = workedOut,
): Figure => {
  const formula: Formula = { kind: 'words', words: how };
  return Object.assign(settle(head), { value, formula, inputs: figuresIn(how), source });
};

const figuresIn = (how: Phrase): readonly Figure[] =>
  holesOf(how).flatMap((h) => (h.kind === 'figure' ? h.figure : []));

/**
 * A figure computed from others. In `formula` each input stands in braces, `{ratio} × {width}`; `parseFormula` says
 * what else may stand there.
 */
export function computed(
  head: Head,
  value: Interval | undefined,
  formula: string,
  inputs: Readonly<Record<string, Figure>>,
  source: FigureSource = workedOut,
): Figure {
  const expression: Formula = { kind: 'expression', text: formula, over: inputs };
  return Object.assign(settle(head), {
    value,
    formula: expression,
    inputs: Object.values(inputs),
    source,
  });
}

/** The same figure under another key or label, or with what governs it said. */
export const renamed = (figure: Figure, change: Partial<Head>): Figure =>
  Object.assign({ ...figure }, settle({ ...figure, ...change }));
