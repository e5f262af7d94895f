import {
  type ShowOptions,
  type System,
  showPair,
  showRange,
  showTapePair,
  showTapeRange,
} from '@cribwright/units';
import { dimensionOf, type QuantityKind, unitOf } from './values/quantity-kind.js';
import type { Figure, Quantity } from './values/values.js';

/** Digits of a computed load, stress or area outside a calculation. */
const significant = 3;

/** Kinds that a model computes, and that are known to three digits at best. */
const computedKinds: ReadonlySet<QuantityKind> = new Set([
  'force',
  'stress',
  'pressure',
  'area',
  'stiffness',
]);

/** Whether a US reader takes it from a tape. */
const onTape = (kind: QuantityKind, units: System) =>
  units === 'us' && (kind === 'length' || kind === 'place' || kind === 'span');

/** A number as a sentence or a drawing says it; nothing where it is not known. */
export function showQuantity(q: Quantity, units: System): string | undefined {
  if (q.value === undefined) return undefined;
  const digits = computedKinds.has(q.quantity) && q.stated !== true ? { significant } : {};
  const feet = q.quantity !== 'length';
  if (q.beside !== undefined) {
    const { side, limit, value: other } = q.beside;
    const own =
      side === 'demand'
        ? limit === 'most'
          ? q.value.high
          : q.value.low
        : limit === 'most'
          ? q.value.low
          : q.value.high;
    const [demand, bound] = side === 'demand' ? [own, other] : [other, own];
    const pair = onTape(q.quantity, units)
      ? showTapePair(demand, bound, { limit, feet })
      : showPair(demand, bound, dimensionOf(q.quantity), unitOf(q.quantity, units), { limit, ...digits });
    return side === 'demand' ? pair.value : pair.limit;
  }
  return onTape(q.quantity, units)
    ? showTapeRange(q.value, { rounding: q.rounding, feet })
    : show(q, units, { rounding: q.rounding, ...digits });
}

type Shown = Pick<Figure, 'value' | 'quantity' | 'rounding' | 'unit'>;

/** A figure's value with all the digits that its unit is worth. */
export const showFigureValue = (f: Shown, units: System): string | undefined =>
  show(f, units, { rounding: f.rounding });

/** A figure inside a calculation: with digits enough that the printed numbers multiply out on paper. */
export const showWorking = (f: Shown, units: System): string | undefined =>
  show(f, units, { rounding: 'nearest', workings: true });

const show = (
  { value, quantity, unit }: Pick<Shown, 'value' | 'quantity' | 'unit'>,
  units: System,
  options: ShowOptions,
): string | undefined =>
  value === undefined
    ? undefined
    : showRange(value, dimensionOf(quantity), unitOf(quantity, units, unit), options);
