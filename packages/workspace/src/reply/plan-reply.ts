import type { Analysis } from '@cribwright/engine';
import type { TextRange, Unread } from '@cribwright/language';
import type { Plan } from '@cribwright/model';

/** All that is known of the plans in one file. */
export interface AnalysisReply {
  readonly uri: string;
  /** Version of the text that the reply speaks of: a count that the editor raises. */
  readonly version: number;
  /** `errors`: the text has errors; plans that could still be read are given, as far as they were read. */
  readonly state: 'good' | 'errors' | 'no plan';
  readonly plans: readonly PlanReply[];
  /** The push is still being worked out; `AnalysisChanged` comes again when it is. */
  readonly pending: boolean;
}

/** A plan, what its checks say, and where its elements stand in the text. */
export interface PlanReply {
  readonly plan: Plan;
  readonly analysis: Analysis;
  /** Where each element and property stands. Key: `element` or `element#property`. */
  readonly places: Readonly<Record<string, TextRange>>;
  /** The plan was not read whole: part of it may be missing. Nothing of it may look safe. */
  readonly partial: boolean;
  /** What could not be read, in this file and in those that the plan reads from. Empty where it was read whole. */
  readonly unread: readonly Unread[];
}
