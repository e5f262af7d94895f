import type { Finding } from '@cribwright/engine';
import type { TextChange } from '@cribwright/language';
import type { Message } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import type { System } from '@cribwright/units';
import type { AnalysisReply, PlanReply } from '../reply/plan-reply.js';

/** Everything that is known of one file: what is wrong with its text, and what the checks say of its plans. */
export interface Checked {
  readonly uri: string;
  /** Of the text: a count that the editor raises with each edit. */
  readonly version: number;
  readonly state: AnalysisReply['state'];
  readonly problems: readonly Problem[];
  readonly plans: readonly PlanReply[];
  /**
   * What is not worked out yet: every load and what hangs on one, or the push that a plan holds alone. Until then
   * nothing here may look as if all checks had run.
   */
  readonly pending: Pending | undefined;
}

/** What is not worked out yet: every load and what hangs on one, or the push alone. */
export type Pending = 'loads' | 'push';

/** Something to tell a person at a place in a file: of the text, or a finding on a plan. */
export interface Problem {
  /** Of a text problem its code, of a finding its rule. */
  readonly code: string;
  readonly source: 'text' | 'plan';
  readonly severity: 'danger' | 'warning' | 'note' | 'unused';
  readonly message: Message;
  readonly span: Span;
  readonly related: readonly { readonly uri: string; readonly span: Span; readonly message: Message }[];
  readonly fixes: readonly ProblemFix[];
  readonly finding?: Finding;
  /** The title of the plan that a finding speaks of. */
  readonly plan?: string;
  /** The units that its plan asks for. */
  readonly units?: System;
}

/** Changes of files that would put a problem right, by the addresses of the files. */
export interface ProblemFix {
  readonly title: Message;
  readonly safe: boolean;
  readonly edits: Readonly<Record<string, readonly TextChange[]>>;
}

/** Of a file that is not there. */
export const nothingChecked = (uri: string): Checked => ({
  uri,
  version: 0,
  state: 'no plan',
  problems: [],
  plans: [],
  pending: undefined,
});
