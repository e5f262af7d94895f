import type { Location } from 'vscode-languageserver';
import type { BoundFile } from '../binding/bound-file.js';
import { nameAt } from './at-cursor.js';
import type { Feature } from './feature.js';
import type { FeatureContext } from './feature-context.js';
import { offsetAt, rangeOf } from './positions.js';

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
