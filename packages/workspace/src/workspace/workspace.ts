import type { BoundFile } from '@cribwright/language';
import type { Surroundings } from '@cribwright/language/internal';
import type { Figure } from '@cribwright/messages';
import type { AnalysisReply } from '../reply/plan-reply.js';
import type { AnalysesSettings } from './analyses.js';
import type { Checked, Pending } from './checked.js';
import type { FileSource } from './files.js';

export type { Checked, Pending, Problem } from './checked.js';
export type { FileSource } from './files.js';
export { libraryFolder, libraryUri } from './files.js';

/** The files of a reader, bound and checked as asked. Once files are loaded, everything is synchronous. */
export interface Workspace {
  /** An open editor's text wins over the file. */
  put(uri: string, text: string, version: number): void;
  /** Closed, changed on disk or deleted: forget it, read it again when asked. */
  drop(uri: string): void;
  /** Other folders are open: what lay outside of them may now be read. */
  foldersChanged(): void;
  /** Reads in the file and all that it uses. */
  load(uri: string): Promise<void>;
  /** Read and bound; `undefined` where there is no such file, or it was not loaded. Never throws. */
  bound(uri: string): BoundFile | undefined;
  /**
   * Works out what `check` is to say, plan by plan, and stops after each, so that a file with many plans holds nobody up.
   */
  prepare(uri: string): Generator<void>;
  /** The answer for a file within the time limit: see `timeLimit`. */
  check(uri: string): Checked;
  /**
   * Works out what `check` left pending, and stops after each step, so that it can be dropped: the loads alone, or
   * the push too. Once it is done, `check` gives that as well. Gives whether there was anything to do.
   */
  complete(uri: string, wanted: Pending): Generator<void, boolean>;
  /** Its plans before any check has run, where `check` will not say all at once; `undefined` where it will. */
  layout(uri: string): AnalysisReply | undefined;
  /** Whether the checks of some plan of it took long the last time. */
  isSlow(uri: string): boolean;
  /** What the `let` comes to whose name starts there. In a pattern: once for each use in this file. */
  valuesAt(uri: string, nameStart: number): readonly Figure[];
  /** Loaded files that use it, directly or not. */
  dependents(uri: string): readonly string[];
  /** Loaded files, without the library. */
  uris(): readonly string[];
  /** What a file sees. For features that offer names. */
  surroundings(uri: string): Surroundings;
}

/** Where a workspace reads files from, and how its checks run. */
export interface WorkspaceOptions extends AnalysesSettings {
  readonly files: FileSource;
  /** Opened folders. Imports stay inside them; with none, inside the file's own folder. */
  readonly folders: readonly string[];
}
