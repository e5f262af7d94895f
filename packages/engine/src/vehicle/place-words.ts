import { show } from '@cribwright/units';
import type { Display } from '../figure/units-of.js';
import type { Point } from '../placed/frame.js';

const unitOf = (display: Display) => (display === 'us' ? 'ft in' : 'm');

/** A length as a plan spells it, to the nearest: `3 ft 4 in`, `1.02 m`. */
export const lengthWords = (value: number, display: Display): string =>
  show(value, 'length', unitOf(display), {
    rounding: 'nearest',
    digits: display === 'us' ? 1 : 3,
  });

/** A place as a plan spells it: `19 ft 6 in, driver side 3 ft 6.8 in`. */
export function placeWords({ x, y }: Point, display: Display): string {
  const across =
    Math.abs(y) < 0.001
      ? 'center'
      : `${y < 0 ? 'driver' : 'passenger'} side ${lengthWords(Math.abs(y), display)}`;
  return `${lengthWords(x, display)}, ${across}`;
}
