import { type Figure, print, sourceInWords } from '@cribwright/engine';
import { type Paint, printable } from '../terminal/paint.js';

/** The sum in names and numbers, as one line. */
export const formulaText = (figure: Figure): string =>
  figure.formula === undefined
    ? givenText(figure.source)
    : figure.formula.names === figure.formula.numbers
      ? figure.formula.numbers
      : `${figure.formula.names} = ${figure.formula.numbers}`;

/** How a figure that is not worked out came in. */
function givenText({ kind }: Figure['source']): string {
  switch (kind) {
    case 'stated':
      return 'as stated';
    case 'policy':
      return 'set by the policy';
    case 'invented':
      return 'invented';
    case 'unknown':
      return 'not known';
    case 'published':
    case 'common practice':
    case 'from memory':
      return 'from its source';
    case 'computed':
      return 'worked out';
  }
}

/** Where a figure comes from. One that was worked out names where the numbers in it come from. */
export function sourceText(figure: Figure): string {
  const roots = rootSources(figure);
  if (figure.source.kind !== 'computed') return roots.join('; ');
  return roots.length === 0 ? sourceInWords(figure.source) : `worked out from: ${roots.join('; ')}`;
}

/** The sources of the numbers that a figure is worked out from, each once. */
function rootSources(figure: Figure): readonly string[] {
  const roots =
    figure.source.kind === 'computed' ? figure.inputs.flatMap(rootSources) : [sourceInWords(figure.source)];
  return [...new Set(roots)];
}

/** The figures of a finding, one a line: name, value, sum. Columns line up. Then where the numbers come from. */
export function sumLines(figures: readonly Figure[], paint: Paint): readonly string[] {
  const labels = figures.map((f) => printable(f.label));
  const values = figures.map((f) => printable(print(f)));
  const widest = (list: readonly string[]) => Math.max(0, ...list.map((s) => s.length));
  const sums = figures.map((f, i) => {
    const label = (labels[i] ?? '').padEnd(widest(labels));
    const value = (values[i] ?? '').padEnd(widest(values));
    return `  ${label}  ${value}  ${printable(formulaText(f))}`;
  });
  const sources = [...new Set(figures.flatMap(rootSources))].map(printable);
  return [...sums, ...(sources.length === 0 ? [] : [paint('quiet', `  sources  ${sources.join('; ')}`)])];
}
