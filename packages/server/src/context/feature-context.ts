import type { BoundFile } from '@cribwright/language';
import type { Workspace } from '@cribwright/workspace';
import type { Checked, Pending } from '@cribwright/workspace/internal';
import type { CancellationToken } from 'vscode-languageserver';
import type { Locale } from '../l10n/say.js';
import type { Settings } from './settings.js';

/** What every feature works on: the files, and how its user wants things said. Knows no connection. */
export interface FeatureContext {
  readonly workspace: Workspace;
  readonly settings: Settings;
  readonly locale: Locale;
  /** The file as it stands now, with all that it uses read in. `undefined` where there is no such file. */
  file(uri: string): Promise<BoundFile | undefined>;
  /** Its problems and the analysis of its plans. Rejects where the request was canceled before it came to that. */
  checked(uri: string, token?: CancellationToken): Promise<Checked | undefined>;
  /** The same, with the loads worked out, or the push too. Rejects where the request was canceled. */
  whole(uri: string, wanted: Pending, token?: CancellationToken): Promise<Checked | undefined>;
  /** Every plan file of the opened folders, read in. For what goes across files. */
  everyFile(): Promise<readonly BoundFile[]>;
  /** The same files with other texts in some of them, to try a change out. Touches nothing. */
  /** Its checks are worked out in steps: see `complete`. */
  copyWith(texts: ReadonlyMap<string, string>): Workspace;
  /** Lets what waits come first, between two steps of something long: a cancellation, or an edit. */
  pause(): Promise<void>;
}
