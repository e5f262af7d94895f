import type { Figure } from '@cribwright/messages';
import { list, type Message, message, name, term, type Words } from '@cribwright/messages';
import { type Paint, printable } from '../terminal/paint.js';

/** The sum in names and numbers, as one line. */
export function formulaText(figure: Figure, words: Words): string {
  const written = words.calculation(figure);
  if (written === undefined) return words.message(givenText(figure.source));
  const { names, numbers } = written;
  return names === numbers ? numbers : `${names} = ${numbers}`;
}

/** How a figure that is not worked out came in. */
function givenText({ kind }: Figure['source']): Message {
  switch (kind) {
    case 'stated':
      return term('cli.as-stated');
    case 'policy':
      return term('cli.set-by-policy');
    case 'invented':
      return term('cli.invented');
    case 'unknown':
      return term('cli.not-known');
    case 'published':
    case 'common practice':
    case 'from memory':
      return term('cli.from-its-source');
    case 'computed':
      return term('cli.computed');
  }
}

/** Where a figure comes from. One that was worked out names where the numbers in it come from. */
export function sourceText(figure: Figure, words: Words): string {
  const roots = rootSources(figure, words);
  if (figure.source.kind !== 'computed') return roots.join('; ');
  return roots.length === 0
    ? words.source(figure.source)
    : words.message(message('cli.computed-from', { sources: list(roots.map(name), 'groups') }));
}

/** The sources of the numbers that a figure is worked out from, each once. */
function rootSources(figure: Figure, words: Words): readonly string[] {
  const roots =
    figure.source.kind === 'computed'
      ? figure.inputs.flatMap((f) => rootSources(f, words))
      : [words.source(figure.source)];
  return [...new Set(roots)];
}

/** The figures of a finding, one a line: name, value, sum. Columns line up. Then where the numbers come from. */
export function sumLines(figures: readonly Figure[], paint: Paint, words: Words): readonly string[] {
  const labels = figures.map((f) => printable(words.label(f)));
  const values = figures.map((f) => printable(words.value(f)));
  const widest = (list: readonly string[]) => Math.max(0, ...list.map((s) => s.length));
  const sums = figures.map((f, i) => {
    const label = (labels[i] ?? '').padEnd(widest(labels));
    const value = (values[i] ?? '').padEnd(widest(values));
    return `  ${label}  ${value}  ${printable(formulaText(f, words))}`;
  });
  const sources = [...new Set(figures.flatMap((f) => rootSources(f, words)))].map(printable);
  return [
    ...sums,
    ...(sources.length === 0
      ? []
      : [paint('quiet', `  ${words.message(term('cli.sources')).padEnd(9)}${sources.join('; ')}`)]),
  ];
}
