import type { Figure } from '@cribwright/engine';
import { show, showRange } from '@cribwright/units';
import { type Paint, printable } from '../terminal/paint.js';
import { sourceInWords } from './source.js';

/** `38.5 in`, `36,000 to 42,000 lb`, `not known`. */
export function figureText(figure: Figure): string {
  const { value, dimension, unit, rounding } = figure;
  if (value === undefined) return 'not known';
  return value.low === value.high
    ? show(value.low, dimension, unit, { rounding })
    : showRange(value, dimension, unit, { rounding });
}

/** The sum in names and numbers, as one line. */
export const formulaText = (figure: Figure): string =>
  figure.formula === undefined
    ? 'as stated'
    : figure.formula.names === figure.formula.numbers
      ? figure.formula.numbers
      : `${figure.formula.names} = ${figure.formula.numbers}`;

/** The figures of a finding, one a line: name, value, sum, source. Columns line up. */
export function sumLines(figures: readonly Figure[], paint: Paint): readonly string[] {
  const labels = figures.map((f) => printable(f.label));
  const values = figures.map((f) => printable(figureText(f)));
  const widest = (list: readonly string[]) => Math.max(0, ...list.map((s) => s.length));
  return figures.map((f, i) => {
    const label = (labels[i] ?? '').padEnd(widest(labels));
    const value = (values[i] ?? '').padEnd(widest(values));
    const source = paint('quiet', `[${printable(sourceInWords(f.source))}]`);
    return `  ${label}  ${value}  ${printable(formulaText(f))}  ${source}`;
  });
}
