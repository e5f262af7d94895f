import type { Figure } from '@cribwright/messages';
import { count } from '@cribwright/messages';
import type { Surroundings } from '../binding/file-scope.js';
import type { BoundBlock, BoundFile, Declaration } from '../bound/bound-file.js';
import { type LanguageProblem, problem } from '../problems/problem.js';
import { calculatedValue } from './calculated-value.js';
import type { Elaborated } from './elaborated.js';
import { outermost } from './expansion.js';
import { type ElaboratedPlan, elaboratePlan } from './plan.js';
import { type ElaboratedBefore, takeOver } from './take-over.js';

export interface ElaboratedFile {
  readonly plans: readonly Elaborated[];
  readonly problems: readonly LanguageProblem[];
  /** Each plan by itself, for what may be taken over after an edit. */
  readonly parts: ElaboratedBefore['parts'];
  /** What the `let` comes to whose name starts there. In a pattern: once for each use in this file. */
  readonly valuesAt: (nameStart: number) => readonly Figure[];
}

/** More than a district has in one file; each takes its time. */
const mostPlans = 250;

/**
 * Every plan of a file, those inside sites and lessons too.
 *
 * @param before what the file came to before an edit, where all that it sees in other files is still the same
 */
export function elaborate(file: BoundFile, around: Surroundings, before?: ElaboratedBefore): ElaboratedFile {
  const blocks = planBlocks(file.blocks);
  const kept = before ? takeOver(before, file) : () => undefined;
  const parts = blocks.slice(0, mostPlans).map((block) => {
    const taken = kept(block);
    return { block, elaborated: taken ? keptPlan(taken, around) : elaboratePlan(block, around) };
  });
  const made = parts.map(({ elaborated }) => elaborated);
  const beyond = blocks[mostPlans];
  const tooMany = beyond ? [problem('too-many-plans', beyond.headSpan, { most: count(mostPlans) })] : [];
  const plans = made.flatMap((m) => m.made ?? []);
  const valuesAt = (nameStart: number) => {
    const d = file.declarations.find(
      ({ kind, nameSpan }) => kind === 'value' && nameSpan.start === nameStart,
    );
    return d ? valuesOf(d, made, around) : [];
  };
  return { plans, problems: [...made.flatMap((m) => m.problems), ...tooMany], parts, valuesAt };
}

/** Its calculated values are asked for seldom: they are worked out then. */
const keptPlan = (made: Elaborated, around: Surroundings): ElaboratedPlan => ({
  made,
  problems: [],
  valuesOf: (d) => elaboratePlan(made.block, around).valuesOf(d),
});

/** A value that stands in no plan, and one of a pattern that no plan here uses, knows of no vehicle or support. */
function valuesOf(d: Declaration, plans: readonly ElaboratedPlan[], around: Surroundings): readonly Figure[] {
  const found = plans.flatMap((plan) => plan.valuesOf(d));
  if (found.length > 0) return found;
  const names = { around, within: outermost, figureOf: () => undefined, known: new Map() };
  return [calculatedValue(d, names) ?? []].flat();
}

/** Plans at the top of a file, and those inside its sites and lessons. */
export const planBlocks = (blocks: readonly BoundBlock[]): readonly BoundBlock[] =>
  blocks.flatMap((b) => (b.schema.keyword === 'plan' ? [b] : planBlocks(b.blocks)));
