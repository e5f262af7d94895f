import type { Plan, PlanPoint } from '@cribwright/model';
import { type Rounding, show } from '@cribwright/units';

type Units = Plan['display'];

/** A length as the text of a plan spells it in its own units, to the nearest: `3 ft 4 in`, `1.02 m`. */
export const lengthText = (value: number, units: Units): string =>
  show(value, 'length', units === 'us' ? 'ft in' : 'm', {
    rounding: 'nearest',
    digits: units === 'us' ? 1 : 3,
  });

/** A size as the text of a plan spells it in its own units: `3.5 in`, `90 mm`. */
export const sizeText = (value: number, units: Units, rounding: Rounding): string =>
  show(value, 'length', units === 'us' ? 'in' : 'mm', { rounding });

/** A place as the text of a plan spells it: `19 ft 6 in, driver side 3 ft 6.8 in`. */
export function placeText({ x, y }: PlanPoint, units: Units): string {
  const across =
    Math.abs(y) < 0.001
      ? 'center'
      : `${y < 0 ? 'driver' : 'passenger'} side ${lengthText(Math.abs(y), units)}`;
  return `${lengthText(x, units)}, ${across}`;
}
