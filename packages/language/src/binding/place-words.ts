import { article } from '../phrase/kind-words.js';
import type { BlockSchema } from '../schema/block-schema.js';
import type { Sayable } from '../schema/schema.js';
import type { BoundBlock } from './bound-file.js';
import type { DraftBlock } from './draft.js';

/** A block by its kind and name: `crib A`. */
export const subjectOf = (b: Pick<BoundBlock, 'schema' | 'name'>): string =>
  b.name === undefined ? `This ${b.schema.keyword}` : `${b.schema.keyword} ${b.name}`;

export const where = (block: DraftBlock | undefined): string =>
  block ? `in ${article(block.schema.keyword)}` : 'at the top of a file';

export const rightPlace = (b: BlockSchema): string =>
  b.within.map((w) => (w === 'file' ? 'at the top of a file' : `in ${article(w)}`)).join(' or ');

export const choices = (sayable: Sayable): string => {
  const keys = [...sayable.blocks.keys(), ...sayable.properties.keys()];
  return keys.length <= 14 ? keys.join(', ') : `${keys.slice(0, 14).join(', ')} …`;
};

export const freeName = (name: string, taken: (name: string) => boolean): string => {
  const stem = name.replace(/\d+$/, '');
  const start = Number(/\d+$/.exec(name)?.[0] ?? 1);
  for (let n = start + 1; ; n++) if (!taken(`${stem}${n}`)) return `${stem}${n}`;
};
