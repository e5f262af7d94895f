import type { BlockSchema } from '../bound/block-schema.js';
import type { BoundBlock } from '../bound/bound-file.js';
import type { DraftBlock } from './draft.js';

/** The nearest block around that may hold it, so that a brace left out spoils no more than it must. */
export const homeFor = (
  kind: BlockSchema,
  block: DraftBlock | undefined,
): DraftBlock | 'file' | undefined => {
  for (let b = block; b; b = b.parent as DraftBlock | undefined)
    if (kind.within.includes(b.schema.keyword)) return b;
  return kind.within.includes('file') ? 'file' : undefined;
};

export const scopeOf = (block: DraftBlock | undefined): BoundBlock | undefined => {
  for (let b = block; b; b = b.parent as DraftBlock | undefined)
    if (b.schema.ownScope) return b as BoundBlock;
  return undefined;
};

export const elementOf = (kind: BlockSchema, name: string | undefined): string | undefined => {
  if (!kind.element) return undefined;
  if (kind.head.name === 'none' || kind.keyword === 'plan') return kind.element;
  return name === undefined ? undefined : `${kind.element}/${name}`;
};
