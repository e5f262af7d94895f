import type { Figure, Interval } from '@cribwright/engine';
import { show, showRange } from '@cribwright/units';

/** How numbers are said on one plan's drawings: in the reader's units, never rounded toward danger. */
export interface Say {
  /** A place or a size along the vehicle: `24 ft 6 in`, `7.47 m`. */
  readonly long: (metres: number) => string;
  /** A size at hand: `38.5 in`, `978 mm`. */
  readonly short: (metres: number) => string;
  readonly force: (newtons: Interval, rounding?: Figure['rounding']) => string;
  readonly ratio: (value: number) => string;
  readonly angle: (radians: number) => string;
  readonly duration: (seconds: Interval) => string;
  /** A figure as the engine wants it shown; `not known` where it is not known. */
  readonly figure: (figure: Figure | undefined) => string;
}

export const sayIn = (display: 'us' | 'si'): Say => ({
  long: (m) => show(m, 'length', display === 'us' ? 'ft in' : 'm', { rounding: 'nearest' }),
  short: (m) => show(m, 'length', display, { rounding: 'nearest' }),
  force: (n, rounding = 'up') => showRange(n, 'force', display, { rounding }),
  ratio: (v) => show(v, 'ratio', '%', { rounding: 'up' }),
  angle: (rad) => show(rad, 'angle', 'deg', { rounding: 'nearest' }),
  duration: (s) => showRange(s, 'duration', 'min', { rounding: 'up' }),
  figure: (figure) => {
    if (figure?.value === undefined) return 'not known';
    const known = said[display].get(figure);
    if (known !== undefined) return known;
    const words = showRange(figure.value, figure.dimension, figure.unit, {
      rounding: figure.rounding,
      system: display,
    })
      .trim()
      .replace(/ (in|ft|mm|cm|m)2$/, ' $1²');
    said[display].set(figure, words);
    return words;
  },
});

/** Figures that were said before: one drawing says each of them several times. */
const said = { us: new WeakMap<Figure, string>(), si: new WeakMap<Figure, string>() };
