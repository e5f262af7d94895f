import { show, showPair, showRange } from '@cribwright/units';
import type { Figure } from './figure.js';

/** A figure as a reader sees it: `24,000 lb`, `36,000 to 42,000 lb`, `not known`. */
export const print = (figure: Pick<Figure, 'value' | 'dimension' | 'unit' | 'rounding'>): string =>
  figure.value === undefined
    ? 'not known'
    : showRange(figure.value, figure.dimension, figure.unit, { rounding: figure.rounding });

/** A figure inside a sum: with digits enough that the printed numbers multiply out on paper. */
export const printWorking = (figure: Pick<Figure, 'value' | 'dimension' | 'unit'>): string =>
  figure.value === undefined
    ? 'not known'
    : showRange(figure.value, figure.dimension, figure.unit, { rounding: 'nearest', workings: true });

/** One number as a figure of that kind would print it. */
export const printAs = (figure: Omit<Figure, 'value'>, value: number): string =>
  show(value, figure.dimension, figure.unit, { rounding: figure.rounding });

/** The worst end of a figure: the high end of a demand, the low end of a limit. */
export const worst = (figure: Figure, side: 'demand' | 'limit'): number | undefined =>
  side === 'demand' ? figure.value?.high : figure.value?.low;

/**
 * A demand beside its limit, each at its worst end, printed so that they read in the order in which they are.
 * `least` is for a limit that the value must not fall below.
 */
export function printBeside(
  demand: Figure,
  limit: Figure,
  kind: 'most' | 'least' = 'most',
): { readonly demand: string; readonly limit: string } {
  const value = kind === 'most' ? demand.value?.high : demand.value?.low;
  const bound = kind === 'most' ? limit.value?.low : limit.value?.high;
  if (value === undefined || bound === undefined) return { demand: print(demand), limit: print(limit) };
  const shown = showPair(value, bound, demand.dimension, demand.unit, { limit: kind });
  return { demand: shown.value, limit: shown.limit };
}
