import type { Plan, Ref } from '@cribwright/engine';
import type { BoundBlock, BoundFile } from '../binding/bound-file.js';
import type { Surroundings } from '../binding/file-scope.js';
import type { Span } from '../grammar/syntax.js';
import type { LanguageProblem } from '../problems/problem.js';
import { elaboratePlan } from './plan.js';

/** Where an element or a line of it is written. */
export interface TextPlace {
  readonly uri: string;
  readonly span: Span;
  /** The text of that file. */
  readonly text: string;
  readonly block?: BoundBlock;
  /** Of a line, what stands after its key. */
  readonly value?: Span;
}

/** A plan as the engine takes it, and where each piece of it was written. */
export interface Elaborated {
  readonly plan: Plan;
  /** Keyed `element` or `element#property`. */
  readonly places: ReadonlyMap<string, TextPlace>;
  readonly block: BoundBlock;
  /** All of the file that the plan stands in. */
  readonly text: string;
  /** Something in the plan could not be read. */
  readonly partial: boolean;
  /** The property if it is written, else the element, else the plan's title. */
  placeOf(ref: Ref): TextPlace;
}

export interface ElaboratedFile {
  readonly plans: readonly Elaborated[];
  readonly problems: readonly LanguageProblem[];
}

/** Every plan of a file, those inside sites and lessons too. */
export function elaborate(
  file: BoundFile,
  around: Surroundings,
  display: 'us' | 'si' | undefined,
): ElaboratedFile {
  const made = planBlocks(file.blocks).map((block) => elaboratePlan(block, around, display));
  return { plans: made.flatMap((m) => m.made ?? []), problems: made.flatMap((m) => m.problems) };
}

/** Plans at the top of a file, and those inside its sites and lessons. */
export const planBlocks = (blocks: readonly BoundBlock[]): readonly BoundBlock[] =>
  blocks.flatMap((b) => (b.schema.keyword === 'plan' ? [b] : planBlocks(b.blocks)));
