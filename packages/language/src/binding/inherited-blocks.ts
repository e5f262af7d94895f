import type { BoundBlock } from '../bound/bound-file.js';
import { type Surroundings, typeChain } from './file-scope.js';

/** The same block in the types that its vehicle extends: lines left out here may be said there. */
export function inheritedBlocks(block: BoundBlock, around: Surroundings): readonly BoundBlock[] {
  if (block.schema.head.type?.extends) return typeChain(block, around).slice(1);
  const vehicle = block.parent;
  if (!vehicle || !block.schema.within.includes('vehicle type')) return [];
  return typeChain(vehicle, around)
    .slice(1)
    .flatMap((type) =>
      type.blocks.filter((b) => b.schema.keyword === block.schema.keyword && b.name === block.name),
    );
}
