import { type Locale, type Words, wordsIn } from '@cribwright/messages';
import { localeOf, readSettings } from '@cribwright/server/protocol';
import * as vscode from 'vscode';

/** The language of all that Cribwright says: as set, or the editor's own where it is one that we speak. */
const readerLocale = (): Locale =>
  localeOf(readSettings(vscode.workspace.getConfiguration('cribwright')), vscode.env.language);

/** The words in which a reader sees a plan. The server has put the units that were asked for into `display`. */
export const readerWords = (plan?: { readonly display: 'us' | 'si' }): Words =>
  wordsIn(readerLocale(), plan?.display ?? 'us');
