import type { BoundFile } from '@cribwright/language';
import type { Declaration } from '@cribwright/language/internal';
import { SymbolKind, type TypeHierarchyItem } from 'vscode-languageserver';
import { nameAt, sameDeclaration } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { offsetAt, rangeOf } from '../context/positions.js';

/** `typeHierarchy`: which type or policy extends which, both ways. */
export const typeHierarchy: Feature = {
  offers: () => ({ typeHierarchyProvider: true }),
  serve(session) {
    const { languages } = session.connection;
    languages.typeHierarchy.onPrepare(async ({ textDocument, position }) => {
      const file = await session.file(textDocument.uri);
      return file ? prepare(session, file, offsetAt(file, position)) : null;
    });
    languages.typeHierarchy.onSupertypes(({ item }) => supertypes(session, item));
    languages.typeHierarchy.onSubtypes(({ item }) => subtypes(session, item));
  },
};

export function prepare(desk: FeatureContext, file: BoundFile, offset: number): TypeHierarchyItem[] {
  const target = nameAt(file, offset)?.target;
  if (!target) return [];
  const type = extendsOthers(target) ? target : target.block?.type?.target;
  return type && extendsOthers(type) ? itemOf(desk, type) : [];
}

const extendsOthers = (declaration: Declaration): boolean =>
  declaration.block?.schema.head.type?.extends === true;

export async function supertypes(
  desk: FeatureContext,
  item: TypeHierarchyItem,
): Promise<TypeHierarchyItem[]> {
  const above = (await declarationOf(desk, item))?.block?.type?.target;
  return above ? itemOf(desk, above) : [];
}

export async function subtypes(desk: FeatureContext, item: TypeHierarchyItem): Promise<TypeHierarchyItem[]> {
  const target = await declarationOf(desk, item);
  if (!target) return [];
  const home = desk.workspace.bound(target.uri);
  const files = new Map([...(home ? [home] : []), ...(await desk.everyFile())].map((f) => [f.uri, f]));
  return [...files.values()].flatMap((file) =>
    file.declarations
      .filter(
        (d) => extendsOthers(d) && d.block?.type?.target && sameDeclaration(d.block.type.target, target),
      )
      .flatMap((d) => itemOf(desk, d)),
  );
}

async function declarationOf(
  desk: FeatureContext,
  item: TypeHierarchyItem,
): Promise<Declaration | undefined> {
  const file = await desk.file(item.uri);
  if (!file) return undefined;
  const at = offsetAt(file, item.selectionRange.start);
  return file.declarations.find((d) => d.name === item.name && d.nameSpan.start === at);
}

function itemOf(desk: FeatureContext, declaration: Declaration): TypeHierarchyItem[] {
  const home = desk.workspace.bound(declaration.uri);
  if (!home) return [];
  return [
    {
      name: declaration.name,
      detail: declaration.kind,
      kind: SymbolKind.Class,
      uri: home.uri,
      range: rangeOf(home, declaration.span),
      selectionRange: rangeOf(home, declaration.nameSpan),
    },
  ];
}
