import type { System } from '@cribwright/units';
import { type Expression, parseFormula } from './formula.js';
import { holesOf } from './message.js';
import { showWorking } from './show-quantity.js';
import type { Figure, Hole, Phrase } from './values/values.js';

interface Writer {
  readonly units: System;
  readonly label: (f: Figure) => string;
  readonly message: (m: Phrase) => string;
  readonly format: (id: string, holes: Readonly<Record<string, string>>) => string;
  readonly notKnown: () => string;
  readonly value: (f: Figure) => string;
}

/** A figure's formula with names and with numbers; nothing for a figure that was not computed. */
export function writeCalculation(
  figure: Figure,
  writer: Writer,
): { readonly names: string; readonly numbers: string } | undefined {
  const { formula } = figure;
  if (formula === undefined) return undefined;
  if (formula.kind === 'words')
    return hasFigures(formula.words)
      ? {
          names: writer.message(withLabels(formula.words)),
          numbers: writer.message(formula.words),
        }
      : { names: writer.message(formula.words), numbers: writer.value(figure) };
  const tree = parseFormula(formula.text);
  const write = (input: (f: Figure) => string) =>
    writeExpression(tree, writer, (name) => {
      const found = formula.over[name];
      return found === undefined ? name : input(found);
    });
  return {
    names: write(writer.label),
    numbers: write((f) => showWorking(f, writer.units) ?? writer.notKnown()),
  };
}

const hasFigures = (words: Phrase): boolean => holesOf(words).some((h) => h.kind === 'figure');

/** The same words with each figure's label in place of its value. */
function withLabels(words: Phrase): Phrase {
  const labeled = (h: Hole): Hole => (h.kind === 'figure' ? h.figure.label : h);
  switch (words.kind) {
    case 'name':
      return words;
    case 'list':
      return { ...words, items: words.items.map(labeled) };
    case 'message':
      return {
        ...words,
        holes: Object.fromEntries(Object.entries(words.holes).map(([name, h]) => [name, labeled(h)])),
      };
  }
}

function writeExpression(e: Expression, writer: Writer, input: (name: string) => string): string {
  const write = (of: Expression) => writeExpression(of, writer, input);
  switch (e.kind) {
    case 'number':
      return String(e.value);
    case 'input':
      return input(e.name);
    case 'negative':
      return `−${write(e.of)}`;
    case 'group':
      return `(${write(e.of)})`;
    case 'square':
      return `${write(e.of)}²`;
    case 'binary':
      return `${write(e.left)} ${e.sign} ${write(e.right)}`;
    case 'written out':
      return `${write(e.of)} (= ${write(e.same)})`;
    case 'where':
      return `${write(e.value)}, ${e.name} = ${write(e.of)}`;
    case 'call':
      return writeCall(e, writer, write);
  }
}

function writeCall(
  { name, of }: Extract<Expression, { kind: 'call' }>,
  { format }: Writer,
  write: (e: Expression) => string,
): string {
  const [a = '', b = ''] = of.map(write);
  switch (name) {
    case 'sqrt':
      return `√(${a})`;
    case 'sin':
    case 'cos':
    case 'tan':
    case 'arctan':
      return `${name}(${a})`;
    case 'min':
      return format('word.lesser', { a, b });
    case 'max':
      return format('word.larger', { a, b });
    case 'floorTo':
      return format('word.floor-to', { value: a, step: b });
  }
}
