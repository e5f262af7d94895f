import type { BoundBlock, BoundFile, BoundProperty } from '@cribwright/language';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { rangeOf } from '../context/positions.js';

/** `textDocument/documentSymbol`: the outline, and the breadcrumbs above the text. */
export const documentSymbol: Feature = {
  offers: () => ({ documentSymbolProvider: true }),
  serve({ connection, file }) {
    connection.onDocumentSymbol(async ({ textDocument }) => {
      const found = await file(textDocument.uri);
      return found ? symbolsOf(found) : null;
    });
  },
};

/** Blocks as they nest, with the steps of a plan as the lines they are. */
export const symbolsOf = (file: BoundFile): DocumentSymbol[] => [
  ...file.lets.map((line) => lineSymbol(file, line)),
  ...file.blocks.map((block) => blockSymbol(file, block)),
];

function blockSymbol(file: BoundFile, block: BoundBlock): DocumentSymbol {
  const steps = block.schema.numbered
    ? block.properties.filter((p) => p.schema === block.schema.numbered)
    : [];
  const lets = block.properties.filter((p) => p.schema.key === 'let');
  return {
    name: labelOf(block),
    ...(block.type ? { detail: block.type.text } : {}),
    kind: kinds[block.schema.keyword] ?? SymbolKind.Object,
    range: rangeOf(file, block.span),
    selectionRange: rangeOf(file, block.nameSpan ?? block.titleSpan ?? block.keywordSpan),
    children: [
      ...[...steps, ...lets].map((line) => lineSymbol(file, line)),
      ...block.blocks.map((inner) => blockSymbol(file, inner)),
    ],
  };
}

function lineSymbol(file: BoundFile, line: BoundProperty): DocumentSymbol {
  return {
    name: file.text.slice(line.span.start, line.span.end).replace(/\s+/g, ' '),
    kind: line.schema.key === 'let' ? SymbolKind.Variable : SymbolKind.Event,
    range: rangeOf(file, line.span),
    selectionRange: rangeOf(file, line.keySpan),
  };
}

/** `crib A`, `plan "Car under the rail"`, `ground`. */
export const labelOf = ({ schema, name, title }: BoundBlock): string =>
  [schema.keyword, name, title === undefined ? undefined : `"${title}"`]
    .filter((p) => p !== undefined)
    .join(' ');

const kinds: Readonly<Record<string, SymbolKind>> = {
  plan: SymbolKind.Module,
  lesson: SymbolKind.Module,
  site: SymbolKind.Namespace,
  policy: SymbolKind.Namespace,
  cache: SymbolKind.Package,
  pattern: SymbolKind.Function,
  'vehicle type': SymbolKind.Class,
  'strut type': SymbolKind.Class,
  'strap type': SymbolKind.Class,
  'chain type': SymbolKind.Class,
  'wire rope type': SymbolKind.Class,
  'step chock type': SymbolKind.Class,
  timber: SymbolKind.Class,
  species: SymbolKind.Class,
  surface: SymbolKind.Class,
  steps: SymbolKind.Array,
};
