import type { TextChange } from '@cribwright/language';
import type { WorkspaceEdit } from 'vscode-languageserver';
import type { FeatureContext } from '../context/feature-context.js';
import { rangeOf } from '../context/positions.js';

/** Changes in offsets as the protocol says them, in lines. */
export function workspaceEdit(
  desk: FeatureContext,
  edits: Readonly<Record<string, readonly TextChange[]>>,
): WorkspaceEdit {
  const changes: NonNullable<WorkspaceEdit['changes']> = {};
  for (const [uri, list] of Object.entries(edits)) {
    const home = desk.workspace.bound(uri);
    if (home) changes[uri] = list.map(({ span, text }) => ({ range: rangeOf(home, span), newText: text }));
  }
  return { changes };
}
