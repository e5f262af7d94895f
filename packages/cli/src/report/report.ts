import type { Finding } from '@cribwright/engine';
import type { TextRange } from '@cribwright/language';
import type { Message, Phrase } from '@cribwright/messages';
import type { Lesson, PlanReply } from '@cribwright/workspace';

/** Where something stands in a text: lines and characters from 0, as editors count. */
export type Range = TextRange['range'];

/** All that was found in the files of one run, before any format is chosen. Plain data. */
export interface CheckReport {
  readonly files: readonly FileReport[];
  /** Paths that could not be read or held no plan files. Each makes the run end as "could not run". */
  readonly unreadable: readonly { readonly path: string; readonly why: Phrase }[];
}

/** What was found in one file. */
export interface FileReport {
  /** As a person would type it: relative to the folder the command runs in. */
  readonly path: string;
  readonly text: string;
  /** What is wrong with the text itself: names, units, missing lines. */
  readonly problems: readonly LocatedProblem[];
  readonly plans: readonly PlanReport[];
  readonly lessons: readonly Lesson[];
}

export interface LocatedProblem {
  readonly code: string;
  readonly severity: 'danger' | 'warning' | 'note';
  readonly message: Message;
  readonly place: Location;
  readonly related: readonly RelatedPlace[];
  readonly fixes: readonly TextFix[];
}

/** What was found in one plan. */
export interface PlanReport {
  readonly title: string;
  readonly reply: PlanReply;
  /** What could not be read, in any file that the plan reads from. Empty where it was read whole. */
  readonly unread: readonly RelatedPlace[];
  readonly findings: readonly LocatedFinding[];
}

export interface LocatedFinding {
  readonly finding: Finding;
  /** `crib A`, `plan`. */
  readonly subject: string;
  readonly place: Location;
  readonly related: readonly RelatedPlace[];
  readonly fixes: readonly TextFix[];
}

/** A place in a file, with that file's text so that the line can be quoted. */
export interface Location {
  readonly path: string;
  readonly range: Range;
}

export interface RelatedPlace {
  readonly message: Message;
  readonly place: Location;
}

/** What would make it right, as changes of text. */
export interface TextFix {
  readonly title: Message;
  readonly safe: boolean;
  readonly edits: readonly TextChange[];
}

export interface TextChange {
  readonly path: string;
  readonly range: Range;
  readonly text: string;
}
