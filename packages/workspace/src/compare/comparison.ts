import type { Tally } from '@cribwright/engine';
import type { BoundFile } from '@cribwright/language';
import type { Figure, Message, Phrase } from '@cribwright/messages';
import type { ElementId, PolicyKey } from '@cribwright/model';
import type { System } from '@cribwright/units';
import type { PlanReply } from '../reply/plan-reply.js';

/** What differs between two versions of some plan files, in meaning: layout and comments count for nothing. */
export interface Comparison {
  /** Blocks that stand at the top of a file: plans, policies, caches, vehicle types, in the order of the new files. */
  readonly blocks: readonly BlockChange[];
  /** Plans of which a check, a figure or the stock differs, by a change of their own or of what they use. */
  readonly plans: readonly PlanChange[];
  /** Plans that are in both versions, changed or not. */
  readonly compared: number;
}

/** A block and where it stands. */
export interface BlockPlace {
  /** As a person would type it, relative to the folder that was compared. */
  readonly path: string;
  /** From 1. */
  readonly line: number;
}

/** A block of the text that was added, taken out or changed. */
export interface BlockChange {
  readonly kind: 'added' | 'removed' | 'changed';
  /** As the plan language calls it: `plan`, `crib`, `vehicle type`. */
  readonly keyword: string;
  /** Its name or title now; before, where it is gone. Empty where blocks of its kind have none. */
  readonly name: string;
  /** Its name or title before, where it has another one now. */
  readonly renamedFrom?: string;
  /** Its file before, where it stands in another one now. */
  readonly movedFrom?: string;
  readonly before?: BlockPlace;
  readonly after?: BlockPlace;
  /** Ids of the element of the plan that it makes, in the old and in the new plan. */
  readonly element: { readonly before?: ElementId; readonly after?: ElementId };
  readonly lines: readonly LineChange[];
  /** Blocks inside it. */
  readonly blocks: readonly BlockChange[];
}

/** One line of a block, as its author wrote it, without comments. At least one of both is there. */
export interface LineChange {
  /** `courses`, `at`, `4` for a numbered step. */
  readonly key: string;
  readonly before?: string;
  readonly after?: string;
  /** Line of the text from 1: of the new text where it is there, else of the old one. */
  readonly line: number;
}

/** A plan before and after. */
export interface PlanChange {
  readonly title: string;
  readonly path: string;
  /** The units that the plan asks for now. */
  readonly display: System;
  readonly before: PlanState | undefined;
  readonly after: PlanState | undefined;
  readonly findings: readonly FindingChange[];
  readonly limits: readonly LimitChange[];
  readonly figures: readonly FigureChange[];
  readonly stock: readonly StockChange[];
  /** What the checks gave of each version, for drawings. */
  readonly replies: { readonly before?: PlanReply | undefined; readonly after?: PlanReply | undefined };
  /** Elements that differ, by their ids in the old and in the new plan: for drawings. */
  readonly marked: { readonly before: readonly string[]; readonly after: readonly string[] };
}

/** What the checks say of one version of a plan. */
export interface PlanState {
  readonly tally: Tally;
  /** Part of its text could not be read, so that nothing of it counts as safe. */
  readonly partial: boolean;
  /**
   * `unsafe`: a danger that nobody accepted. `not checked`: a check could not run or the text was not read whole.
   * `no danger found`: every check ran.
   */
  readonly verdict: 'unsafe' | 'not checked' | 'no danger found';
}

/** A finding that only one version has, or whose weight differs. */
export interface FindingChange {
  readonly kind: 'new' | 'gone' | 'worse' | 'better' | 'accepted' | 'no longer accepted';
  readonly rule: string;
  readonly severity: 'danger' | 'warning' | 'note';
  readonly couldNotRun: boolean;
  /** The element it speaks of, as people call it. */
  readonly subject: Phrase;
  /** Of the new version where it is there. */
  readonly message: Message;
  /** By whom, why and until when: of an acceptance that is new or gone. */
  readonly accepted?: { readonly by: string; readonly reason: string; readonly until: string };
}

/** A limit of the policy that the plan goes by, where it differs. */
export interface LimitChange {
  /** As a policy block spells it: `use limit`. */
  readonly key: PolicyKey;
  readonly policy: string;
  readonly before: Figure;
  readonly after: Figure;
  /** Less safe than before. `undefined` where neither way is the safe one, or the limit is a word. */
  readonly looser: boolean | undefined;
}

/** A figure that moved. */
export interface FigureChange {
  /** `crib A`, `the trailer`. */
  readonly subject: Phrase;
  readonly label: Phrase;
  readonly before: Figure;
  readonly after: Figure;
  /** Share by which the worse end moved; undefined where one of both is not known or was zero. */
  readonly by: number | undefined;
}

/** A piece of which a plan needs another number now, or of which another number comes. Counts; undefined is not known. */
export interface StockChange {
  readonly item: Phrase;
  readonly needed: readonly [before: number | undefined, after: number | undefined];
  readonly short: readonly [before: number | undefined, after: number | undefined];
}

/** One version: its files as they were read and checked. */
export interface Version {
  readonly files: readonly VersionFile[];
}

/** A file of a version, with its text. */
export interface VersionFile {
  readonly path: string;
  readonly bound: BoundFile;
  readonly plans: readonly PlanReply[];
}
