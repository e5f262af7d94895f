import type { PlanEdit, Ref } from '@cribwright/model';
import type { AnalysisReply } from '@cribwright/workspace';
import type { Range, WorkspaceEdit } from 'vscode-languageserver-types';

export { localeOf, readSettings } from '../context/settings.js';
export { planFilesIn } from '../files/plan-files.js';

/** Requests of our own, beside those of the Language Server Protocol. All data is plain. */

/**
 * By whom something was said. What an earlier life of the server said counts no more: nobody follows the text for it.
 * The answer to `initialize` names the life too, as `life`.
 */
export interface Signed {
  /** Names one run of the server. */
  readonly life: string;
}

/** Client to server: everything known of the plans in one file. The answer is an `AnalysisReply`, signed. */
export const AnalysisRequest = 'cribwright/analysis';
/** Of which file. */
export interface AnalysisParams {
  readonly uri: string;
}
export type SignedAnalysis = AnalysisReply & Signed;

/**
 * Server to client: how the plans of a file lie now, before their checks have run. Each `analysis` in it is
 * `unchecked`, and its `places` are empty: those of the reading before serve until then. Sent where the checks take
 * long, to a client that asked for the analysis of this file before; `AnalysisChanged` follows once they are done.
 */
export const LayoutDrawn = 'cribwright/layout';

/** Server to client: the analysis of a file changed; ask again if you show it. */
export const AnalysisChanged = 'cribwright/analysisChanged';
/** Of which file, at which version of its text, and how many findings of each severity: all numbers are counts. */
export interface AnalysisChangedParams extends Signed {
  readonly uri: string;
  /** Version of the text that was checked: a count that the editor raises. */
  readonly version: number;
  /** Plans in the file. Where there is none, nothing was checked, and nothing is good. */
  readonly plans: number;
  readonly danger: number;
  readonly warning: number;
  readonly note: number;
  /** Findings that a reviewer accepted. They are in no other count. */
  readonly accepted: number;
  /** Checks that could not run. Never shown as good. */
  readonly notRun: number;
  /** A heavy check is still being worked out: this is not the last word. */
  readonly pending: boolean;
  /** Loads, and all that hangs on one, are among it. There is nothing new to draw until they are there. */
  readonly loads?: 'pending';
}

/** Client to server: turn edits of the plan into edits of the text. Used by drags, keys and quick fixes. */
export const EditRequest = 'cribwright/edit';
/** Which edits of which plan. The version of the text is a count that the editor raises. */
export interface EditParams {
  readonly uri: string;
  readonly version: number;
  readonly edits: readonly PlanEdit[];
  /** Which plan of the file, from 0. Without it, the first that has the element. */
  readonly plan?: number;
}
/** The edit of the text, or why there is none. */
export type EditReply =
  | { readonly edit: WorkspaceEdit }
  /** Why not, in words: the text has moved on, or the value is worked out from something else. */
  | { readonly refused: string };

/** Client to server: new place of something dragged, plan meters. Units and style of the text are kept. */
export const MoveRequest = 'cribwright/move';

/** Client to server: the page of a rule in the language of the session, as Markdown. */
export const RulePageRequest = 'cribwright/rulePage';
/** The id of the rule. */
export interface RulePageParams {
  readonly rule: string;
}
/** The page. `undefined` where there is no such rule. */
export interface RulePageReply {
  readonly markdown: string | undefined;
}

/** Client to server: which element stands at a place in the text. */
export const ElementAtRequest = 'cribwright/elementAt';
/** An offset in the text of a file, counted from 0. */
export interface ElementAtParams {
  readonly uri: string;
  readonly offset: number;
}
/** The element, and its property where the place is in one. `undefined` where nothing of a plan stands there. */
export interface ElementAtReply {
  readonly ref: Ref | undefined;
}

/**
 * Client to server: look for changes that make the plans of a file safe, each tried by the checks. Changes nothing.
 * Takes seconds; a client may cancel it.
 */
export const MakeSafeRequest = 'cribwright/makeSafe';
export interface MakeSafeParams {
  readonly uri: string;
}
export interface MakeSafeReply {
  /** Of the text that was looked at: for another one nothing here is meant. */
  readonly version: number;
  /** In one sentence, what was found. */
  readonly summary: string;
  /** The changes in order, in the words of the session. */
  readonly steps: readonly {
    readonly title: string;
    /** `crib-height on crib A` */
    readonly rule: string;
    /** `height limit: 24 in to 48 in` */
    readonly effect: string | undefined;
    /** How much is unsafe or not checked. */
    readonly unsafe: string;
  }[];
  /** What is unsafe after all of them, or could not be checked. */
  readonly left: readonly string[];
  /** The whole text of each file that changes. */
  readonly texts: Readonly<Record<string, string>>;
  /** The same as one edit. */
  readonly edit: WorkspaceEdit;
  /** The plans with it, to be drawn. */
  readonly analysis: AnalysisReply;
}

/** Client to server: run the expectations of a file, for the Testing view. */
export const ExpectationsRequest = 'cribwright/expectations';
/** Each `expect` line of the file, whether it held, and why not. */
export interface ExpectationsReply extends Signed {
  /** Version of the text that was checked: a count that the editor raises. */
  readonly version: number;
  readonly items: readonly {
    readonly id: string;
    readonly label: string;
    readonly plan: string;
    readonly range: Range;
    readonly held: boolean;
    readonly why: string;
  }[];
}

/** Client to server: a file that ships with the tool, `cribwright:/library/timber.crib`. Read-only for the reader. */
export const BundledFileRequest = 'cribwright/bundledFile';
/** Its address. */
export interface BundledFileParams {
  readonly uri: string;
}
/** Its text. */
export interface BundledFileReply {
  /** `undefined` where there is no such file. */
  readonly text: string | undefined;
}

/** Client to server: the names of all files that ship with the tool. */
export const BundledFilesRequest = 'cribwright/bundledFiles';
/** Their addresses. */
export interface BundledFilesReply {
  readonly uris: readonly string[];
}

/** Server to client: read a file. In a browser the server has no files of its own. */
export const ReadFileRequest = 'cribwright/readFile';
/** Its address. */
export interface ReadFileParams {
  readonly uri: string;
}
/** Its text. `undefined` where it cannot be read. */
export interface ReadFileReply {
  readonly text: string | undefined;
}

/** Server to client: what a folder holds. In a browser the server has no files of its own. */
export const ListFolderRequest = 'cribwright/listFolder';
/** Its address. */
export interface ListFolderParams {
  readonly uri: string;
}
/** What the folder holds; nothing where it cannot be read. */
export interface ListFolderReply {
  readonly entries: readonly { readonly uri: string; readonly kind: 'file' | 'folder' }[];
}
