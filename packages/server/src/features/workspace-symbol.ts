import type { BoundFile } from '@cribwright/language';
import type { Kind } from '@cribwright/language/internal';
import { type SymbolInformation, SymbolKind } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { rangeOf } from '../context/positions.js';

/** `workspace/symbol`: finds anything that has a name, in every file of the folder. */
export const workspaceSymbol: Feature = {
  offers: () => ({ workspaceSymbolProvider: true }),
  serve(session) {
    session.connection.onWorkspaceSymbol(({ query }) => workspaceSymbols(session, query));
  },
};

const most = 500;

export async function workspaceSymbols(desk: FeatureContext, query: string): Promise<SymbolInformation[]> {
  const files = await desk.everyFile();
  return files.flatMap((file) => symbolsIn(file, query)).slice(0, most);
}

function symbolsIn(file: BoundFile, query: string): SymbolInformation[] {
  const plans = file.blocks
    .filter((b) => b.title !== undefined && b.name === undefined)
    .filter((b) => matches(b.title ?? '', query))
    .map((b) => ({
      name: b.title ?? '',
      kind: SymbolKind.Module,
      containerName: b.schema.keyword,
      location: { uri: file.uri, range: rangeOf(file, b.titleSpan ?? b.keywordSpan) },
    }));
  const named = file.declarations
    .filter((d) => matches(d.name, query))
    .map((d) => ({
      name: d.name,
      kind: symbolKinds[d.kind] ?? SymbolKind.Object,
      containerName: d.scope?.title ?? d.scope?.name ?? d.kind,
      location: { uri: file.uri, range: rangeOf(file, d.nameSpan) },
    }));
  return [...plans, ...named];
}

/** The letters asked for, in order, anywhere in the name; capitals do not matter. */
export function matches(name: string, query: string): boolean {
  const letters = [...query.toLowerCase().replace(/\s/g, '')];
  let from = 0;
  const lower = name.toLowerCase();
  return letters.every((letter) => {
    const at = lower.indexOf(letter, from);
    from = at + 1;
    return at >= 0;
  });
}

const symbolKinds: Partial<Readonly<Record<Kind, SymbolKind>>> = {
  plan: SymbolKind.Module,
  lesson: SymbolKind.Module,
  site: SymbolKind.Namespace,
  policy: SymbolKind.Namespace,
  cache: SymbolKind.Package,
  pattern: SymbolKind.Function,
  value: SymbolKind.Variable,
  parameter: SymbolKind.Variable,
  part: SymbolKind.Field,
  axle: SymbolKind.Field,
  timber: SymbolKind.Class,
  species: SymbolKind.Class,
  surface: SymbolKind.Class,
  'vehicle type': SymbolKind.Class,
  'strut type': SymbolKind.Class,
  'strap type': SymbolKind.Class,
  'chain type': SymbolKind.Class,
};
