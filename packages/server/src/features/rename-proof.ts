import type { BoundFile, TextChange } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import type { Message } from '@cribwright/messages';
import { message, name as nameHole } from '@cribwright/messages';
import type { Workspace } from '@cribwright/workspace';
import { applyChanges } from '@cribwright/workspace/internal';
import { sameDeclaration } from '../context/at-cursor.js';
import type { FeatureContext } from '../context/feature-context.js';

/**
 * Tries changes out on a copy: every file must be read as before, with each name standing for the same thing.
 * Gives what would be read differently, or nothing.
 */
export async function whatWouldChange(
  desk: FeatureContext,
  name: string,
  edits: Readonly<Record<string, readonly TextChange[]>>,
): Promise<Message | undefined> {
  const texts = new Map<string, string>();
  for (const [uri, changes] of Object.entries(edits)) {
    const text = desk.workspace.bound(uri)?.text;
    if (text !== undefined) texts.set(uri, applyChanges(text, changes));
  }
  const after = desk.copyWith(texts);
  const files = new Set([
    ...texts.keys(),
    ...[...texts.keys()].flatMap((uri) => desk.workspace.dependents(uri)),
  ]);
  for (const uri of files) {
    await after.load(uri);
    const found = differs(desk.workspace, after, uri, name);
    if (found) return found;
  }
  return undefined;
}

function differs(before: Workspace, after: Workspace, uri: string, name: string): Message | undefined {
  const [a, b] = [before.bound(uri), after.bound(uri)];
  if (!a || !b) return undefined;
  const known = a.problems.map((p) => p.code);
  const fresh = b.problems.find((p) => {
    const at = known.indexOf(p.code);
    if (at >= 0) known.splice(at, 1);
    return at < 0;
  });
  if (fresh) return fresh.message;
  const same =
    a.references.length === b.references.length &&
    a.declarations.length === b.declarations.length &&
    a.references.every(({ target }, i) => place(before, target) === place(after, b.references[i]?.target));
  return same ? undefined : message('editor.name-taken', { name: nameHole(name) });
}

/** Which declaration of its file: the same before and after, whatever it is called. */
function place(workspace: Workspace, target: Declaration | undefined): string {
  if (!target) return 'nothing';
  const home: BoundFile | undefined = workspace.bound(target.uri);
  return `${target.uri}#${home?.declarations.findIndex((d) => sameDeclaration(d, target))}`;
}
