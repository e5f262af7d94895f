import { count as countHole, name, term } from '@cribwright/messages';
import type { BoundBlock } from '../bound/bound-file.js';
import { isSupportKind } from '../kind/support-kinds.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { stepLine } from '../schema/steps.js';

/** What there may be at most in one plan. More than crews build at one scene, and what is checked in seconds. */
export const planSize = {
  vehicles: 12,
  supports: 150,
  steps: 200,
  loads: 50,
  /** In one vehicle: axles and parts together, with those of its types. */
  'parts of a vehicle': 100,
} as const;

/**
 * What is too many in a plan to be checked together, each told at the plan's title.
 *
 * @param plan its own block
 * @param patterns the pattern of each use in the plan: each use puts in all of its supports again
 * @param inherited a vehicle with the types it is of, nearest first
 */
export function sizeProblems(
  plan: BoundBlock,
  patterns: readonly BoundBlock[],
  inherited: (vehicle: BoundBlock) => readonly BoundBlock[],
): readonly LanguageProblem[] {
  const blocks = (keyword: string) => plan.blocks.filter((b) => b.schema.keyword === keyword);
  const steps = blocks('steps').flatMap((b) => b.properties.filter((p) => p.schema === stepLine));
  const supports = [plan, ...patterns].reduce(
    (sum, { blocks: own }) => sum + own.filter((b) => isSupportKind(b.schema.declares)).length,
    0,
  );
  const parts = blocks('vehicle').map((v) => ({
    block: v,
    count: inherited(v).reduce((sum, b) => sum + b.blocks.length, 0),
  }));
  const counts = {
    vehicles: blocks('vehicle').length,
    supports,
    steps: steps.length,
    loads: blocks('load').length,
  };
  const most = planSize['parts of a vehicle'];
  return [
    ...(['vehicles', 'supports', 'steps', 'loads'] as const).flatMap((what) =>
      counts[what] <= planSize[what]
        ? []
        : [
            problem(`plan-too-large--${what}`, plan.headSpan, {
              count: countHole(counts[what]),
              most: countHole(planSize[what]),
            }),
          ],
    ),
    ...parts.flatMap(({ block, count }) =>
      count <= most
        ? []
        : [
            problem('plan-too-large--parts', block.headSpan, {
              count: countHole(count),
              most: countHole(most),
              vehicle: block.name === undefined ? term('place.the-vehicle') : name(block.name),
            }),
          ],
    ),
  ];
}
