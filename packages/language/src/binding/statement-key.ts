import type { Term } from '@cribwright/syntax/internal';
import type { PropertySchema } from '../bound/block-schema.js';
import { type AllowedLines, schema } from '../schema/schema.js';
import type { DraftBlock } from './draft.js';

/** The words that a statement starts with, as one key. */
export const keyText = (terms: readonly Term[], length: number) =>
  terms
    .slice(0, length)
    .map((t) => t.text)
    .join(' ');

export const wordsAt = (terms: readonly Term[], length: number) => {
  const run = terms.slice(0, length);
  const [first, last] = [run[0], run.at(-1)];
  return run.length === length && first && last && run.every((t) => t.kind === 'word' || t.kind === 'size')
    ? { text: run.map((t) => t.text).join(' '), span: { start: first.start, end: last.end } }
    : undefined;
};

/** The longest key that a line starts with. */
export function keyAt(
  terms: readonly Term[],
  sayable: Pick<AllowedLines, 'blocks' | 'properties' | 'longest'>,
) {
  for (let length = sayable.longest; length > 0; length--) {
    const words = wordsAt(terms, length);
    if (!words) continue;
    const block = sayable.blocks.get(words.text);
    const property = sayable.properties.get(words.text);
    if (block || property) return { length, block, property };
  }
  return undefined;
}

const allBlocks = {
  blocks: new Map(schema.map((b) => [b.keyword, b])),
  properties: new Map<string, PropertySchema>(),
  longest: 3,
};

/** The block that the words name, wherever it may stand. */
export const everyBlock = (terms: readonly Term[]) => keyAt(terms, allBlocks);

/** `PairUnder(` or `PairUnder East(` */
export const isPatternUse = (terms: readonly Term[], block: DraftBlock | undefined): boolean => {
  if (block?.schema.keyword !== 'plan' || terms[0]?.kind !== 'word') return false;
  return terms[1]?.text === '(' || (terms[1]?.kind === 'word' && terms[2]?.text === '(');
};
