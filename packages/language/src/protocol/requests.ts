import type { Analysis, Message, Plan, PlanEdit, Ref } from '@cribwright/engine';
import type { Range, WorkspaceEdit } from 'vscode-languageserver-types';

/** Requests of our own, beside those of the Language Server Protocol. All data is plain. */

/** Client to server: everything known of the plans in one file. */
export const AnalysisRequest = 'cribwright/analysis';
export interface AnalysisParams {
  readonly uri: string;
}
export interface AnalysisReply {
  readonly uri: string;
  /** Version of the text that the reply speaks of. */
  readonly version: number;
  /** `errors`: the text has errors; plans that could still be read are given, as far as they were read. */
  readonly state: 'good' | 'errors' | 'no plan';
  readonly plans: readonly PlanReply[];
  /** The push is still being worked out; `AnalysisChanged` comes again when it is. */
  readonly pending: boolean;
}
export interface PlanReply {
  readonly plan: Plan;
  readonly analysis: Analysis;
  /** Where each element and property stands. Key: `element` or `element#property`. */
  readonly places: Readonly<Record<string, Place>>;
  /** The plan was not read whole: part of it may be missing. Nothing of it may look safe. */
  readonly partial: boolean;
  /** What could not be read, in this file and in those that the plan reads from. Empty where it was read whole. */
  readonly unread: readonly Unread[];
}
/** An error in text that a plan reads from. */
export interface Unread extends Place {
  /** The name of the file, without its folder. */
  readonly file: string;
  readonly message: Message;
}
export interface Place {
  readonly uri: string;
  readonly range: Range;
}

/**
 * Server to client: how the plans of a file lie now, before their checks have run. Each `analysis` in it is
 * `unchecked`, and its `places` are empty: those of the reading before serve until then. Sent where the checks take
 * long, to a client that asked for the analysis of this file before; `AnalysisChanged` follows once they are done.
 */
export const LayoutDrawn = 'cribwright/layout';

/** Server to client: the analysis of a file changed; ask again if you show it. */
export const AnalysisChanged = 'cribwright/analysisChanged';
export interface AnalysisChangedParams {
  readonly uri: string;
  readonly version: number;
  readonly danger: number;
  readonly warning: number;
  readonly note: number;
  /** Checks that could not run. Never shown as good. */
  readonly notRun: number;
  /** A heavy check is still being worked out: this is not the last word. */
  readonly pending: boolean;
  /** Loads, and all that hangs on one, are among it. There is nothing new to draw until they are there. */
  readonly loads?: 'pending';
}

/** Client to server: turn edits of the plan into edits of the text. Used by drags, keys and quick fixes. */
export const EditRequest = 'cribwright/edit';
export interface EditParams {
  readonly uri: string;
  readonly version: number;
  readonly edits: readonly PlanEdit[];
  /** Which plan of the file, from 0. Without it, the first that has the element. */
  readonly plan?: number;
}
export type EditReply =
  | { readonly edit: WorkspaceEdit }
  /** Why not, in words: the text has moved on, or the value is worked out from something else. */
  | { readonly refused: string };

/** Client to server: new place of something dragged, plan meters. Units and style of the text are kept. */
export const MoveRequest = 'cribwright/move';
export interface MoveParams {
  readonly uri: string;
  readonly version: number;
  readonly element: string;
  readonly moves: 'center' | 'base' | 'head' | 'vehicle';
  readonly to: { readonly x?: number; readonly y?: number; readonly z?: number };
  /** Which plan of the file, from 0. Without it, the first that has the element. */
  readonly plan?: number;
}

/** Client to server: the page of a rule, as Markdown. */
export const RulePageRequest = 'cribwright/rulePage';
export interface RulePageParams {
  readonly rule: string;
}
export interface RulePageReply {
  readonly markdown: string | undefined;
}

/** Client to server: which element stands at a place in the text. */
export const ElementAtRequest = 'cribwright/elementAt';
export interface ElementAtParams {
  readonly uri: string;
  readonly offset: number;
}
export interface ElementAtReply {
  readonly ref: Ref | undefined;
}

/** Client to server: run the expectations of a file, for the Testing view. */
export const ExpectationsRequest = 'cribwright/expectations';
export interface ExpectationsReply {
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
export interface BundledFileParams {
  readonly uri: string;
}
export interface BundledFileReply {
  /** `undefined` where there is no such file. */
  readonly text: string | undefined;
}

/** Client to server: the names of all files that ship with the tool. */
export const BundledFilesRequest = 'cribwright/bundledFiles';
export interface BundledFilesReply {
  readonly uris: readonly string[];
}

/** Server to client: read a file. In a browser the server has no files of its own. */
export const ReadFileRequest = 'cribwright/readFile';
export interface ReadFileParams {
  readonly uri: string;
}
export interface ReadFileReply {
  readonly text: string | undefined;
}

/** Server to client: what a folder holds. In a browser the server has no files of its own. */
export const ListFolderRequest = 'cribwright/listFolder';
export interface ListFolderParams {
  readonly uri: string;
}
export interface ListFolderReply {
  readonly entries: readonly { readonly uri: string; readonly kind: 'file' | 'folder' }[];
}
