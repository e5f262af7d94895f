import type { Figure } from '@cribwright/messages';
import { type Phrase, quantity, shown, term, type Words, wordsIn } from '@cribwright/messages';
import type { Interval, Plan } from '@cribwright/model';
import type { Rounding } from '@cribwright/units';

/** How numbers and words are said on a drawing: in the reader's language and units, never rounded toward danger. */
export interface Say {
  /** A place or a size along the vehicle: `24 ft 6 in`, `7.47 m`. */
  readonly long: (meters: number, rounding?: Rounding) => string;
  /** A size at hand: `38 1/2 in`, `978 mm`. */
  readonly short: (meters: number, rounding?: Rounding) => string;
  readonly force: (newtons: Interval, rounding?: Rounding) => string;
  readonly ratio: (value: number) => string;
  readonly duration: (seconds: Interval) => string;
  /** A figure as the engine wants it shown; `not known` where it is not known. */
  readonly figure: (figure: Figure | undefined) => string;
  /** A message, label or term. */
  readonly message: (m: Phrase) => string;
  /** Makes all other words. */
  readonly words: Words;
}

/** The words of a plan's drawings where no language and no units are asked for: English, in the plan's units. */
export const planWords = (plan: Pick<Plan, 'display'>): Words => wordsIn('en', plan.display);

export const sayIn = (words: Words): Say => ({
  long: (m, rounding = 'nearest') => words.quantity(quantity('place', m, rounding)),
  short: (m, rounding = 'nearest') => words.quantity(quantity('length', m, rounding)),
  force: (n, rounding = 'up') => words.quantity(quantity('force', n, rounding)),
  ratio: (v) => words.quantity(quantity('share', v, 'up')),
  duration: (s) => words.quantity(quantity('duration', s, 'up')),
  figure: (figure) => {
    if (figure?.value === undefined) return words.message(term('word.not-known'));
    const { value, quantity: kind, rounding, source } = figure;
    const number = `${words.locale} ${words.units} ${kind} ${rounding} ${source.kind === 'computed'} ${value.low} ${value.high}`;
    return said(number, () =>
      words
        .quantity(shown(figure))
        .trim()
        .replace(/ (in|ft|mm|cm|m)2$/, ' $1²'),
    );
  },
  message: words.message,
  words,
});

/** Words for numbers that were said before: one drawing says many of them several times, and so does the next. */
const known = new Map<string, string>();
const most = 5000;

function said(number: string, say: () => string): string {
  const before = known.get(number);
  if (before !== undefined) return before;
  if (known.size >= most) known.clear();
  const words = say();
  known.set(number, words);
  return words;
}
