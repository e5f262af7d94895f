import type { BoundFile } from '@cribwright/language';
import type { LocationLink } from 'vscode-languageserver';
import { nameAt } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf, touches } from '../context/positions.js';

/** `textDocument/definition`: from a name to where it is declared, also into the library; from a `use` to the file. */
export const definition: Feature = {
  offers: () => ({ definitionProvider: true }),
  serve(session) {
    session.connection.onDefinition(async ({ textDocument, position }) => {
      const file = await session.file(textDocument.uri);
      return file ? definitionAt(session, file, offsetAt(file, position)) : null;
    });
  },
};

export function definitionAt(desk: FeatureContext, file: BoundFile, offset: number): LocationLink[] {
  const use = file.uses.find((u) => touches(u.pathSpan, offset));
  if (use?.target !== undefined) {
    const top = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
    return [
      {
        targetUri: use.target,
        targetRange: top,
        targetSelectionRange: top,
        originSelectionRange: rangeOf(file, use.pathSpan),
      },
    ];
  }
  const name = nameAt(file, offset);
  const home = name && desk.workspace.bound(name.target.uri);
  if (!home) return [];
  return [
    {
      targetUri: home.uri,
      targetRange: rangeOf(home, name.target.span),
      targetSelectionRange: rangeOf(home, name.target.nameSpan),
      originSelectionRange: rangeOf(file, name.span),
    },
  ];
}
