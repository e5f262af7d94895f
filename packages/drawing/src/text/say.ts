import type { Figure } from '@cribwright/messages';
import { term, type Words, wordsIn } from '@cribwright/messages';
import type { Interval } from '@cribwright/model';
import { show, showRange } from '@cribwright/units';

/** How numbers are said on one plan's drawings: in the reader's units, never rounded toward danger. */
export interface Say {
  /** A place or a size along the vehicle: `24 ft 6 in`, `7.47 m`. */
  readonly long: (meters: number) => string;
  /** A size at hand: `38.5 in`, `978 mm`. */
  readonly short: (meters: number, rounding?: Figure['rounding']) => string;
  readonly force: (newtons: Interval, rounding?: Figure['rounding']) => string;
  readonly ratio: (value: number) => string;
  readonly angle: (radians: number) => string;
  readonly duration: (seconds: Interval) => string;
  /** A figure as the engine wants it shown; `not known` where it is not known. */
  readonly figure: (figure: Figure | undefined) => string;
  /** Makes all other words. */
  readonly words: Words;
}

export const sayIn = (display: 'us' | 'si', words: Words = wordsIn('en', display)): Say => ({
  long: (m) => show(m, 'length', display === 'us' ? 'ft in' : 'm', { rounding: 'nearest' }),
  short: (m, rounding = 'nearest') => show(m, 'length', display, { rounding }),
  force: (n, rounding = 'up') => showRange(n, 'force', display, { rounding }),
  ratio: (v) => show(v, 'ratio', '%', { rounding: 'up' }),
  angle: (rad) => show(rad, 'angle', 'deg', { rounding: 'nearest' }),
  duration: (s) => showRange(s, 'duration', 'min', { rounding: 'up' }),
  figure: (figure) => {
    if (figure?.value === undefined) return words.message(term('word.not-known'));
    const { value, quantity, unit, rounding } = figure;
    return said(`${words.locale} ${display} ${quantity} ${unit} ${rounding} ${value.low} ${value.high}`, () =>
      words
        .value(figure)
        .trim()
        .replace(/ (in|ft|mm|cm|m)2$/, ' $1²'),
    );
  },
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
