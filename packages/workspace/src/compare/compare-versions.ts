import type { BoundBlock, BoundFile } from '@cribwright/language';
import type { PlanReply } from '../reply/plan-reply.js';
import { rangeOf } from '../workspace/lines.js';
import { blockChanges, namesNow, placeOf } from './block-changes.js';
import type { BlockChange, Comparison, PlanChange, Version, VersionFile } from './comparison.js';
import { allPairs, type Candidate, candidates, type Matched, matchBlocks } from './match-blocks.js';
import { planChange } from './plan-change.js';
import { elementValue } from './same-element.js';

/**
 * Compares two versions of plan files in meaning: what was added, taken out, changed, renamed or moved, and what the
 * checks say otherwise of each plan. Layout, comments, the order of blocks and how a number is written count for
 * nothing.
 */
export function compareVersions(before: Version, after: Version): Comparison {
  const matched = matchBlocks(before.files.flatMap(topBlocks), after.files.flatMap(topBlocks));
  const replies = new Map([...repliesIn(before), ...repliesIn(after)]);
  const names = namesNow(matched.pairs, (name) => name);
  const idsOf = idsNow(matched);
  const alike = (old: BoundBlock, now: BoundBlock): boolean => sameElement(old, now, replies, idsOf);
  const blocks = blockChanges(matched, names, alike);
  const pairs = planPairs(matched);
  const plans = pairs.map(([old, now]): PlanChange => {
    const [was, is] = [old && replies.get(old.block), now && replies.get(now.block)];
    const { block, path } = now ?? old;
    return {
      title: block.title ?? '',
      path,
      display: (is ?? was)?.plan.display ?? 'us',
      ...planChange(was, is, idsOf(old?.block)),
      replies: { before: was, after: is },
      marked: marked(findChange(blocks, old, now)),
    };
  });
  return {
    blocks,
    plans: plans.filter(
      (p) =>
        p.before?.verdict !== p.after?.verdict ||
        p.findings.length + p.limits.length + p.figures.length + p.stock.length > 0,
    ),
    compared: pairs.filter(([old, now]) => old && now).length,
  };
}

const topBlocks = ({ path, bound }: VersionFile) => candidates(bound.blocks, path, bound.text);

type PlanPair =
  | readonly [Candidate, Candidate]
  | readonly [Candidate, undefined]
  | readonly [undefined, Candidate];

/** Plans in both versions, gone, or new. */
const planPairs = ({ pairs, removed, added }: Matched): readonly PlanPair[] =>
  [
    ...pairs.map(({ before, after }): PlanPair => [before, after]),
    ...removed.map((c): PlanPair => [c, undefined]),
    ...added.map((c): PlanPair => [undefined, c]),
  ].filter(([old, now]) => (now ?? old)?.block.schema.keyword === 'plan');

/** The replies of a version by the block that each was made from. */
function repliesIn({ files }: Version): readonly (readonly [BoundBlock, PlanReply])[] {
  return files.flatMap(({ bound, plans }) =>
    plans.flatMap((reply) => {
      const block = bound.blocks.find((b) => isAt(b, bound, reply));
      return block === undefined ? [] : [[block, reply] as const];
    }),
  );
}

function isAt(block: BoundBlock, { text, uri }: BoundFile, { plan, places }: PlanReply): boolean {
  const place = places[plan.ref.element];
  const { start } = rangeOf(text, block.headSpan);
  return (
    place?.uri === uri &&
    place.range.start.line === start.line &&
    place.range.start.character === start.character
  );
}

/** For each old plan: what its elements are called in the new one. */
function idsNow({ pairs }: Matched): (plan: BoundBlock | undefined) => (id: string) => string {
  const known = new Map(
    pairs.map((pair) => [
      pair.before.block,
      new Map(
        allPairs(pair.inside).flatMap(({ before, after }) =>
          before.block.elementId === undefined || after.block.elementId === undefined
            ? []
            : [[before.block.elementId, after.block.elementId] as const],
        ),
      ),
    ]),
  );
  return (plan) => (id) => (plan === undefined ? undefined : known.get(plan)?.get(id)) ?? id;
}

/** Whether two blocks inside plans make the same element, however it is written. */
function sameElement(
  old: BoundBlock,
  now: BoundBlock,
  replies: ReadonlyMap<BoundBlock, PlanReply>,
  idsOf: (plan: BoundBlock | undefined) => (id: string) => string,
): boolean {
  const [planBefore, planAfter] = [old.parent, now.parent];
  const [was, is] = [planBefore && replies.get(planBefore), planAfter && replies.get(planAfter)];
  if (was === undefined || is === undefined || was.partial || is.partial) return false;
  const [oldId, nowId] = [old.elementId ?? old.schema.keyword, now.elementId ?? now.schema.keyword];
  const before = elementValue(was.plan, oldId, idsOf(planBefore));
  return before !== undefined && before === elementValue(is.plan, nowId, (id) => id);
}

/** The change of a plan, if its text changed: the one that stands at its place. */
const findChange = (
  blocks: readonly BlockChange[],
  old: Candidate | undefined,
  now: Candidate | undefined,
): BlockChange | undefined => {
  const [from, to] = [old && placeOf(old), now && placeOf(now)];
  return blocks.find((b) =>
    to === undefined
      ? b.before?.path === from?.path && b.before?.line === from?.line && b.after === undefined
      : b.after?.path === to.path && b.after.line === to.line,
  );
};

/** Elements of a plan that differ. */
function marked(change: BlockChange | undefined): PlanChange['marked'] {
  const inside = change?.blocks ?? [];
  return {
    before: inside.flatMap((b) => b.element.before ?? []),
    after: inside.flatMap((b) => b.element.after ?? []),
  };
}
