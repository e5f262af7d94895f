import type { BoundFile } from '@cribwright/language';
import type { Location } from 'vscode-languageserver';
import { nameAt } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf } from '../context/positions.js';

/** `textDocument/typeDefinition`: from a vehicle or a support to the type it is of. */
export const typeDefinition: Feature = {
  offers: () => ({ typeDefinitionProvider: true }),
  serve(session) {
    session.connection.onTypeDefinition(async ({ textDocument, position }) => {
      const file = await session.file(textDocument.uri);
      return file ? typeDefinitionAt(session, file, offsetAt(file, position)) : null;
    });
  },
};

export function typeDefinitionAt(desk: FeatureContext, file: BoundFile, offset: number): Location | null {
  const type = nameAt(file, offset)?.target.block?.type?.target;
  const home = type && desk.workspace.bound(type.uri);
  return home ? { uri: home.uri, range: rangeOf(home, type.nameSpan) } : null;
}
