import { type List, list, type Message, message, type Name, name, term } from '@cribwright/messages';
import type { BlockSchema } from '../bound/block-schema.js';
import type { BoundBlock } from '../bound/bound-file.js';
import type { AllowedLines } from '../schema/schema.js';
import type { DraftBlock } from './draft.js';

/** A block by its kind and name, to start a sentence: `Crib A`. */
export const subjectOf = ({ schema, name: own }: Pick<BoundBlock, 'schema' | 'name'>): Message | Name =>
  own === undefined
    ? message('place.this-block', { keyword: name(schema.keyword) })
    : capitalized(`${schema.keyword} ${own}`);

/** A word of the plan language with its first letter large, to start a sentence. */
export const capitalized = (words: string): Name => name(words.charAt(0).toUpperCase() + words.slice(1));

/** `in a crib` */
export const inKind = (keyword: string): Message =>
  message(keyword === 'steps' ? 'place.in-the' : /^[aeiou]/.test(keyword) ? 'place.in-an' : 'place.in-a', {
    keyword: name(keyword),
  });

/** `in crib A` */
export const inBlock = ({ schema, name: own }: Pick<BoundBlock, 'schema' | 'name'>): Message =>
  own === undefined
    ? message('place.in-this', { keyword: name(schema.keyword) })
    : message('place.in-named', { block: name(`${schema.keyword} ${own}`) });

export const where = (block: DraftBlock | undefined): Message =>
  block ? inKind(block.schema.keyword) : term('place.top');

export const rightPlace = (b: BlockSchema): List =>
  list(
    b.within.map((w) => (w === 'file' ? term('place.top') : inKind(w))),
    'or',
  );

/** The words that lines here start with, as many as help. */
export const choices = (sayable: AllowedLines): string => {
  const keys = [...sayable.blocks.keys(), ...sayable.properties.keys()];
  return keys.length <= 14 ? keys.join(', ') : `${keys.slice(0, 14).join(', ')} …`;
};

export const freeName = (name: string, taken: (name: string) => boolean): string => {
  const stem = name.replace(/\d+$/, '');
  const start = Number(/\d+$/.exec(name)?.[0] ?? 1);
  for (let n = start + 1; ; n++) if (!taken(`${stem}${n}`)) return `${stem}${n}`;
};
