import type { BoundFile, TextChange } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import { message, name as nameHole, term } from '@cribwright/messages';
import { ErrorCodes, type Range, ResponseError, type WorkspaceEdit } from 'vscode-languageserver';
import { nameAt, usesIn } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf } from '../context/positions.js';
import { say as translate } from '../l10n/say.js';
import { filesThatMayUse } from './references.js';
import { whatWouldChange } from './rename-proof.js';
import { workspaceEdit } from './workspace-edit.js';

/** `textDocument/rename` and `prepareRename`: one name, in every file that uses it. Refuses what would break a plan. */
export const rename: Feature = {
  offers: () => ({ renameProvider: { prepareProvider: true } }),
  serve(session) {
    session.connection.onPrepareRename(async ({ textDocument, position }) => {
      const file = await session.file(textDocument.uri);
      return file ? prepareRename(session, file, offsetAt(file, position)) : null;
    });
    session.connection.onRenameRequest(async ({ textDocument, position, newName }) => {
      const file = await session.file(textDocument.uri);
      return file ? renameAt(session, file, offsetAt(file, position), newName) : null;
    });
  },
};

export function prepareRename(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
): { range: Range; placeholder: string } {
  const { span, target } = nameToChange(desk, file, offset);
  return { range: rangeOf(file, span), placeholder: target.name };
}

export async function renameAt(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
  newName: string,
): Promise<WorkspaceEdit> {
  const { target } = nameToChange(desk, file, offset);
  const name = newName.trim();
  if (!isName.test(name))
    throw refusal(translate(message('editor.not-a-name', { name: nameHole(name) }), desk.locale));
  const edits: Record<string, TextChange[]> = {};
  const add = (uri: string, change: TextChange): void => {
    const list = edits[uri] ?? [];
    edits[uri] = list;
    if (!list.some((c) => c.span.start === change.span.start)) list.push(change);
  };
  add(target.uri, { span: target.nameSpan, text: name });
  for (const each of await filesThatMayUse(desk, file, target))
    for (const { span } of usesIn(each, target)) add(each.uri, { span, text: name });
  const problem = await whatWouldChange(desk, name, edits);
  if (problem)
    throw refusal(
      translate(message('editor.name-changes', { name: nameHole(name), what: problem }), desk.locale),
    );
  return workspaceEdit(desk, edits);
}

const isName = /^[A-Za-z_\u00C0-\u024F][A-Za-z0-9_\u00C0-\u024F]*$/;

const refusal = (why: string): ResponseError<void> => new ResponseError(ErrorCodes.InvalidParams, why);

function nameToChange(desk: FeatureContext, file: BoundFile, offset: number) {
  const name = nameAt(file, offset);
  if (!name) throw refusal(translate(term('editor.no-name'), desk.locale));
  if (fromLibrary(name.target))
    throw refusal(
      translate(message('editor.library-name', { name: nameHole(name.target.name) }), desk.locale),
    );
  return name;
}

const fromLibrary = ({ uri }: Declaration): boolean => uri.startsWith('cribwright:');
