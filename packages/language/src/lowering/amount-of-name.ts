import type { Surroundings } from '../binding/file-scope.js';
import type { BoundProperty, Declaration } from '../bound/bound-file.js';
import { type Amount, evaluate, type Values } from '../phrase/evaluate.js';
import type { Expression } from '../phrase/expression.js';
import type { Expansion } from './expansion.js';

/** Where names are looked up: the files, the figures of what stands in the plan, and one use of a pattern. */
export interface Names {
  readonly around: Surroundings;
  readonly within: Expansion;
  readonly figureOf: Values['figureOf'];
  /** What was worked out already, in this one calculation. */
  readonly known: Map<Declaration, Amount | undefined>;
}

/** The line of a `let`. */
export const letLineOf = (d: Declaration, around: Surroundings): BoundProperty | undefined => {
  const lines = d.block?.properties ?? around.shapeOf(d.uri)?.lets ?? [];
  return lines.find((l) => l.schema.key === 'let' && l.span.start === d.span.start) as
    | BoundProperty
    | undefined;
};

/** What stands after the `=` of a `let`. */
export const letExpression = (d: Declaration, around: Surroundings): Expression | undefined => {
  const match = letLineOf(d, around)?.match;
  // What was not read right comes to nothing: its own error says so.
  if (!match || match.problems.some((p) => p.severity === 'error')) return undefined;
  return match.values.value as Expression | undefined;
};

/**
 * What a `let` or a parameter comes to. `undefined` where that cannot be told, where it hangs on itself, and at
 * the end of a long chain.
 */
export function amountOfName(d: Declaration, names: Names, depth = 0): Amount | undefined {
  const { known } = names;
  if (known.has(d) || depth > deepest) return known.get(d);
  // What hangs on itself meets this on the way.
  known.set(d, undefined);
  const inner = (next: Expansion): Values => ({
    amountOf: (other) => amountOfName(other, { ...names, within: next }, depth + 1),
    figureOf: names.figureOf,
  });
  const [expression, from] = expressionOf(d, names);
  const amount = expression && evaluate(expression, inner(from));
  known.set(d, amount);
  return amount;
}

/** What is evaluated for a name, and where the names in it are looked up. */
function expressionOf(
  d: Declaration,
  { around, within }: Names,
): readonly [Expression | undefined, Expansion] {
  if (d.kind !== 'parameter') return [letExpression(d, around), within];
  const { given, outer } = within;
  const value = given.get(d.name)?.value;
  return [value?.kind === 'quantity' && outer ? value.expression : undefined, outer ?? within];
}

const deepest = 64;
