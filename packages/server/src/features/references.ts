import type { BoundFile } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import type { Location } from 'vscode-languageserver';
import { nameAt, usesIn } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf } from '../context/positions.js';

/** `textDocument/references`: every use of a name, in every file of the folder. */
export const references: Feature = {
  offers: () => ({ referencesProvider: true }),
  serve(session) {
    session.connection.onReferences(async ({ textDocument, position, context }) => {
      const file = await session.file(textDocument.uri);
      return file ? referencesAt(session, file, offsetAt(file, position), context.includeDeclaration) : null;
    });
  },
};

export async function referencesAt(
  desk: FeatureContext,
  file: BoundFile,
  offset: number,
  withDeclaration: boolean,
): Promise<Location[]> {
  const name = nameAt(file, offset);
  if (!name) return [];
  const home = desk.workspace.bound(name.target.uri);
  const declared =
    withDeclaration && home ? [{ uri: home.uri, range: rangeOf(home, name.target.nameSpan) }] : [];
  const used = (await filesThatMayUse(desk, file, name.target)).flatMap((each) =>
    usesIn(each, name.target).map(({ span }) => ({ uri: each.uri, range: rangeOf(each, span) })),
  );
  return [...declared, ...used];
}

/** A name that is seen inside one block only cannot be used in another file. */
export async function filesThatMayUse(
  desk: FeatureContext,
  file: BoundFile,
  target: Declaration,
): Promise<readonly BoundFile[]> {
  if (target.scope) return [file];
  const all = await desk.everyFile();
  const home = desk.workspace.bound(target.uri);
  return [...new Map([file, ...(home ? [home] : []), ...all].map((f) => [f.uri, f])).values()];
}
