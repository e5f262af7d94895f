import type { BlockSchema, Container, PropertySchema } from '../bound/block-schema.js';
import { cache } from './cache.js';
import { cribBlocks } from './crib.js';
import { gearBlocks } from './gear.js';
import { lessonBlocks } from './lesson.js';
import { letLine, pattern } from './pattern-block.js';
import { plan, planParts } from './plan.js';
import { policy } from './policy.js';
import { siteBlocks } from './site.js';
import { steps } from './steps.js';
import { strutBlocks } from './strut.js';
import { materialBlocks } from './timber.js';
import { vehicleBlocks } from './vehicle.js';

/** Every kind of block there is. Binding, completion, hover, coloring and the reference pages all read this. */
export const schema: readonly BlockSchema[] = [
  plan,
  ...planParts,
  ...vehicleBlocks,
  ...cribBlocks,
  ...strutBlocks,
  steps,
  ...materialBlocks,
  ...gearBlocks,
  policy,
  cache,
  ...siteBlocks,
  ...lessonBlocks,
  pattern,
];

const letIn: readonly Container[] = ['file', 'plan', 'pattern'];

/** What may be said in one container: lines and blocks, by key. */
export interface AllowedLines {
  readonly blocks: ReadonlyMap<string, BlockSchema>;
  readonly properties: ReadonlyMap<string, PropertySchema>;
  readonly numbered: PropertySchema | undefined;
  /** Words in the longest key. */
  readonly longest: number;
}

const cacheOf = new Map<BlockSchema | 'file', AllowedLines>();

/** What may stand in a block, or at the top of a file. */
export function allowedIn(block: BlockSchema | 'file'): AllowedLines {
  const known = cacheOf.get(block);
  if (known) return known;
  const where = block === 'file' ? 'file' : block.keyword;
  const blocks = new Map(schema.filter((b) => b.within.includes(where)).map((b) => [b.keyword, b]));
  const properties = new Map((block === 'file' ? [] : block.properties).map((p) => [p.key, p]));
  if (letIn.includes(where)) properties.set('let', letLine);
  const keys = [...blocks.keys(), ...properties.keys()];
  const made: AllowedLines = {
    blocks,
    properties,
    numbered: block === 'file' ? undefined : block.numbered,
    longest: Math.max(1, ...keys.map((k) => k.split(' ').length)),
  };
  cacheOf.set(block, made);
  return made;
}
