import type { BoundBlock } from '@cribwright/language';
import { lineMeaning } from './line-text.js';

/** A block with the path of its file and what tells it from its neighbors. */
export interface Candidate {
  readonly path: string;
  readonly text: string;
  readonly block: BoundBlock;
  /** Its keyword with its name or title; unnamed ones of a kind are counted. */
  readonly identity: string;
}

/** One block in both versions, and what stands in it. */
export interface Pair {
  readonly before: Candidate;
  readonly after: Candidate;
  readonly inside: Matched;
}

export interface Matched {
  readonly pairs: readonly Pair[];
  readonly removed: readonly Candidate[];
  readonly added: readonly Candidate[];
}

export const nameOf = ({ name, title }: BoundBlock): string => title ?? name ?? '';

/** Blocks of one file, or of one block, as candidates for a match. */
export function candidates(blocks: readonly BoundBlock[], path: string, text: string): readonly Candidate[] {
  const counts = new Map<string, number>();
  return blocks.map((block) => {
    const key = `${block.schema.keyword} ${nameOf(block)}`;
    const nth = counts.get(key) ?? 0;
    counts.set(key, nth + 1);
    return { path, text, block, identity: nth === 0 ? key : `${key} ${nth + 1}` };
  });
}

/** Share of lines that two blocks must have in common to be taken for one block that got another name. */
const enoughAlike = 0.6;

/**
 * Finds which block of the old version is which of the new one: the same name in the same file first, then the same
 * name in another file, then whatever is much alike and has no counterpart (renamed).
 */
export function matchBlocks(before: readonly Candidate[], after: readonly Candidate[]): Matched {
  const pairs: Pair[] = [];
  let left = before;
  let right = after;
  const take = (keyOf: (c: Candidate) => string) => {
    const byKey = new Map<string, Candidate[]>();
    for (const c of right) byKey.set(keyOf(c), [...(byKey.get(keyOf(c)) ?? []), c]);
    const taken = new Set<Candidate>();
    left = left.filter((c) => {
      const found = byKey.get(keyOf(c))?.shift();
      if (found === undefined) return true;
      taken.add(found);
      pairs.push(pairOf(c, found));
      return false;
    });
    right = right.filter((c) => !taken.has(c));
  };
  take((c) => `${c.path}\n${c.identity}`);
  take((c) => c.identity);
  const alike = left
    .flatMap((b) => right.map((a) => ({ before: b, after: a, share: likeness(b.block, a.block) })))
    .filter(({ share }) => share >= enoughAlike)
    .sort((x, y) => y.share - x.share);
  const used = new Set<Candidate>();
  for (const { before: b, after: a } of alike) {
    if (used.has(b) || used.has(a)) continue;
    used.add(b).add(a);
    pairs.push(pairOf(b, a));
  }
  return {
    pairs,
    removed: left.filter((c) => !used.has(c)),
    added: right.filter((c) => !used.has(c)),
  };
}

const pairOf = (before: Candidate, after: Candidate): Pair => ({
  before,
  after,
  inside: matchBlocks(candidatesIn(before), candidatesIn(after)),
});

const candidatesIn = ({ block, path, text }: Candidate): readonly Candidate[] =>
  candidates(block.blocks, path, text);

/** All pairs, those inside others too. */
export const allPairs = ({ pairs }: Matched): readonly Pair[] =>
  pairs.flatMap((pair) => [pair, ...allPairs(pair.inside)]);

/** Share of lines that both blocks have, of all lines of either; 0 for blocks of another kind, or without any line. */
function likeness(a: BoundBlock, b: BoundBlock): number {
  if (a.schema.keyword !== b.schema.keyword) return 0;
  const [one, two] = [linesOf(a), linesOf(b)];
  const rest = [...two];
  let common = 0;
  for (const line of one) {
    const at = rest.indexOf(line);
    if (at < 0) continue;
    rest.splice(at, 1);
    common += 1;
  }
  const all = one.length + two.length - common;
  return all === 0 ? 0 : common / all;
}

const linesOf = (block: BoundBlock): readonly string[] => [
  ...block.properties.map((p) => lineMeaning(p, (name) => name)),
  ...block.blocks.flatMap((b) => [`${b.schema.keyword} ${nameOf(b)}`, ...linesOf(b)]),
];
