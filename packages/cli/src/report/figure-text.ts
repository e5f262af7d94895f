import { type Figure, print, sourceInWords } from '@cribwright/engine';
import { type Paint, printable } from '../terminal/paint.js';

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
  const values = figures.map((f) => printable(print(f)));
  const widest = (list: readonly string[]) => Math.max(0, ...list.map((s) => s.length));
  return figures.map((f, i) => {
    const label = (labels[i] ?? '').padEnd(widest(labels));
    const value = (values[i] ?? '').padEnd(widest(values));
    const source = paint('quiet', `[${printable(sourceInWords(f.source))}]`);
    return `  ${label}  ${value}  ${printable(formulaText(f))}  ${source}`;
  });
}
