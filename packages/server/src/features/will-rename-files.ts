import type { TextChange } from '@cribwright/language';
import type { FileRename, WorkspaceEdit } from 'vscode-languageserver';
import { URI, Utils } from 'vscode-uri';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { relative } from '../context/relative-path.js';
import { workspaceEdit } from './workspace-edit.js';

const plans = { filters: [{ pattern: { glob: '**/*.crib' } }] };

/** `workspace/willRenameFiles`: when a plan file moves, the `use` lines that name it move with it. */
export const willRenameFiles: Feature = {
  offers: () => ({ workspace: { fileOperations: { willRename: plans } } }),
  serve(session) {
    session.connection.workspace.onWillRenameFiles(({ files }) => editsForRenames(session, files));
  },
};

export async function editsForRenames(
  desk: FeatureContext,
  renames: readonly FileRename[],
): Promise<WorkspaceEdit | null> {
  const moved = new Map(renames.map((r) => [URI.parse(r.oldUri).toString(), URI.parse(r.newUri).toString()]));
  const edits: Record<string, TextChange[]> = {};
  for (const file of await desk.everyFile()) {
    const home = moved.get(file.uri) ?? file.uri;
    for (const { path, pathSpan, target } of file.uses) {
      if (target === undefined || target.startsWith('cribwright:')) continue;
      const now = moved.get(target) ?? target;
      if (now === target && home === file.uri) continue;
      const text = relative(folderFor(path, target, home), now);
      if (text === undefined || text === path) continue;
      edits[file.uri] = [...(edits[file.uri] ?? []), { span: pathSpan, text }];
    }
  }
  return Object.keys(edits).length === 0 ? null : workspaceEdit(desk, edits);
}

/** A path may be said from the file's own folder or from one above it: it goes on being said from there. */
function folderFor(path: string, target: string, home: string): string {
  const own = Utils.dirname(URI.parse(home));
  const steps = path.split('/').filter((p) => p !== '..' && p !== '.').length;
  let base = URI.parse(target);
  for (let i = 0; i < steps; i++) base = Utils.dirname(base);
  const above = own.path === base.path || own.path.startsWith(`${base.path.replace(/\/$/, '')}/`);
  const said = !path.startsWith('..') && above ? base : own;
  return said.toString().replace(/\/?$/, '/');
}
