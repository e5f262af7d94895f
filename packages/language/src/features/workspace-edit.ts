import type { WorkspaceEdit } from 'vscode-languageserver';
import type { TextChange } from '../problems/problem.js';
import type { FeatureContext } from './feature-context.js';
import { rangeOf } from './positions.js';

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
