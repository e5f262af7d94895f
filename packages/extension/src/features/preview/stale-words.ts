import * as vscode from 'vscode';
import type { Drawable } from './last-good.js';

/** Why the drawing is not all that is written, in words; `undefined` where it is. */
export const staleWords = ({ stale, plans }: Drawable): string | undefined => {
  if (stale === 'last good') {
    return vscode.l10n.t('The text has errors. This is the last drawing that could be made.');
  }
  if (stale === 'as far as read') {
    return vscode.l10n.t('The text has errors. It is drawn as far as it could be read.');
  }
  return plans.length === 0 ? vscode.l10n.t('There is no plan in this file to draw.') : undefined;
};
