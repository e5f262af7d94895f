import type { BoundBlock } from '@cribwright/language';
import { exerciseProperties } from '@cribwright/language/internal';
import type { PlanReply } from '../reply/plan-reply.js';
import { lineOf } from './line-of.js';

/** The plan that an exercise is about: its text, and what the checks say of it where it was read whole. */
export interface ExercisePlan {
  readonly block: BoundBlock;
  readonly reply: PlanReply | undefined;
}

/** The plan that an exercise names, or the only one of its lesson. */
export function exercisePlan(
  exercise: BoundBlock,
  plans: readonly BoundBlock[],
  replies: readonly PlanReply[],
): ExercisePlan | undefined {
  const named = lineOf(exercise, exerciseProperties.plan)?.plan.text;
  const only = plans.length === 1 ? plans[0] : undefined;
  const block = named === undefined ? only : plans.find((p) => p.name === named);
  if (block === undefined) return undefined;
  return { block, reply: replies.find((p) => p.plan.title === block.title && !p.partial) };
}
