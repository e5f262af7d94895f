import { units } from '@cribwright/units';
import type { PropertySchema } from '../bound/block-schema.js';
import type { Pattern, Shape } from '../bound/shape.js';
import { letLine, parameterTypes, patternUse } from '../schema/pattern-block.js';
import { schema } from '../schema/schema.js';

/** The words of the language by what they are, longest first, as an editor's coloring needs them. */
export interface Vocabulary {
  readonly blocks: readonly string[];
  readonly keys: readonly string[];
  /** Words inside a line: `driver side`, `toward`, `from`. */
  readonly words: readonly string[];
  /** Words to choose among: `solid`, `pinned`. */
  readonly choices: readonly string[];
  readonly units: readonly string[];
  readonly parameterTypes: readonly string[];
}

export const everyProperty: readonly PropertySchema[] = [
  ...schema.flatMap((b) => [...b.properties, ...(b.numbered ? [b.numbered] : [])]),
  letLine,
  patternUse,
];

export function vocabulary(): Vocabulary {
  const words: string[] = [];
  const choices: string[] = [];
  for (const { phrase } of everyProperty) {
    walk(phrase, (p) => {
      if (p.kind === 'word') words.push(...p.words);
      if (p.kind === 'choice') choices.push(...p.words);
      if (p.kind === 'quantity' && p.rule.range) words.push('to');
    });
  }
  const keys = schema.flatMap((b) => b.properties.map((p) => p.key));
  return {
    blocks: longestFirst(schema.map((b) => b.keyword)),
    keys: longestFirst(keys),
    words: longestFirst(words),
    choices: longestFirst(choices.filter((c) => !words.includes(c))),
    units: longestFirst(
      units.flatMap((u) => u.spellings).filter((s) => /^[A-Za-z°%][A-Za-z0-9/ ]*$/.test(s)),
    ),
    parameterTypes: longestFirst(parameterTypes),
  };
}

/** Every piece of a phrase, the phrase itself first. */
export function walk(pattern: Pattern, visit: (p: Shape) => void): void {
  visit(pattern);
  switch (pattern.kind) {
    case 'sequence':
    case 'either':
    case 'any order':
      for (const item of pattern.items) walk(item, visit);
      break;
    case 'optional':
    case 'list':
    case 'group':
      walk(pattern.item, visit);
      break;
    default:
  }
}

const longestFirst = (list: readonly string[]): readonly string[] =>
  [...new Set(list)].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
