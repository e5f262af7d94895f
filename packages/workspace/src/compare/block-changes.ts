import type { BoundBlock } from '@cribwright/language';
import { rangeOf } from '../workspace/lines.js';
import type { BlockChange, BlockPlace, LineChange } from './comparison.js';
import { lineChanges } from './line-changes.js';
import { lineText } from './line-text.js';
import { type Candidate, candidates, type Matched, nameOf, type Pair } from './match-blocks.js';

/**
 * What differs between matched blocks, and the blocks that only one version has.
 *
 * @param alike whether two blocks that are written in another way come to the same element of the plan
 */
export function blockChanges(
  { pairs, removed, added }: Matched,
  nameNow: (name: string) => string,
  alike: (before: BoundBlock, after: BoundBlock) => boolean,
): readonly BlockChange[] {
  const changes = [
    ...pairs.flatMap((pair) => pairChange(pair, nameNow, alike) ?? []),
    ...removed.map((c) => whole('removed', c)),
    ...added.map((c) => whole('added', c)),
  ];
  return changes.sort(inOrder);
}

/** What an old name is called now, where blocks beside it got another one. */
export function namesNow(
  pairs: readonly Pair[],
  outside: (name: string) => string,
): (name: string) => string {
  const names = new Map(
    pairs.flatMap(({ before, after }) =>
      before.block.name === undefined || after.block.name === undefined
        ? []
        : [[before.block.name, after.block.name] as const],
    ),
  );
  return (name) => names.get(name) ?? outside(name);
}

const inOrder = (a: BlockChange, b: BlockChange): number => {
  const [x, y] = [a.after ?? a.before, b.after ?? b.before];
  if (x === undefined || y === undefined) return 0;
  return x.path === y.path ? x.line - y.line : x.path < y.path ? -1 : 1;
};

function pairChange(
  pair: Pair,
  nameNow: (name: string) => string,
  alike: (before: BoundBlock, after: BoundBlock) => boolean,
): BlockChange | undefined {
  const { before, after } = pair;
  const [old, now] = [before.block, after.block];
  const names = namesNow(pair.inside.pairs, nameNow);
  const blocks = blockChanges(pair.inside, names, alike);
  const said = [...headChange(pair, names), ...lineChanges(pair, names)];
  const lines = said.length > 0 && alike(old, now) ? [] : said;
  const moved = before.path === after.path ? {} : { movedFrom: before.path };
  const renamed = nameOf(old) === nameOf(now) ? {} : { renamedFrom: nameOf(old) };
  const kept = Object.keys(moved).length + Object.keys(renamed).length === 0;
  if (kept && blocks.length === 0 && lines.length === 0) return undefined;
  return {
    kind: 'changed',
    keyword: now.schema.keyword,
    name: nameOf(now),
    ...renamed,
    // A block inside one that moved has moved with it.
    ...(now.parent === undefined ? moved : {}),
    before: placeOf(before),
    after: placeOf(after),
    element: { ...idOf('before', old), ...idOf('after', now) },
    lines,
    blocks,
  };
}

/** Another type after the colon. */
function headChange({ before, after }: Pair, nameNow: (name: string) => string): readonly LineChange[] {
  const [old, now] = [before.block.type?.text, after.block.type?.text];
  if ((old === undefined ? undefined : nameNow(old)) === now) return [];
  return [
    {
      key: after.block.schema.keyword,
      ...(old === undefined ? {} : { before: `: ${old}` }),
      ...(now === undefined ? {} : { after: `: ${now}` }),
      line: placeOf(after).line,
    },
  ];
}

function whole(kind: 'added' | 'removed', candidate: Candidate): BlockChange {
  const { block, path, text } = candidate;
  const side = kind === 'added' ? 'after' : 'before';
  return {
    kind,
    keyword: block.schema.keyword,
    name: nameOf(block),
    [side]: placeOf(candidate),
    element: idOf(side, block),
    lines: block.properties.map((p) => ({
      key: p.key,
      [side]: lineText(p, text),
      line: rangeOf(text, p.span).start.line + 1,
    })),
    blocks: candidates(block.blocks, path, text).map((c) => whole(kind, c)),
  };
}

const idOf = (side: 'before' | 'after', { elementId }: BoundBlock) =>
  elementId === undefined ? {} : { [side]: elementId };

/** Where a block begins. */
export const placeOf = ({ path, text, block }: Candidate): BlockPlace => ({
  path,
  line: rangeOf(text, block.headSpan).start.line + 1,
});
