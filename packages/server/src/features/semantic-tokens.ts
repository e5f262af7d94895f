import type { BoundBlock, BoundFile } from '@cribwright/language';
import type { Kind, MatchedSpan, Reference } from '@cribwright/language/internal';
import type { Span } from '@cribwright/syntax/internal';
import { SemanticTokenModifiers, SemanticTokensBuilder, SemanticTokenTypes } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { documentOf, spanOf } from '../context/positions.js';

const types = [
  SemanticTokenTypes.keyword,
  SemanticTokenTypes.property,
  SemanticTokenTypes.class,
  SemanticTokenTypes.variable,
  SemanticTokenTypes.parameter,
  SemanticTokenTypes.function,
  SemanticTokenTypes.namespace,
  SemanticTokenTypes.enumMember,
  SemanticTokenTypes.number,
  SemanticTokenTypes.type,
  SemanticTokenTypes.string,
  SemanticTokenTypes.operator,
] as const;
type TokenType = (typeof types)[number];
const modifiers = [SemanticTokenModifiers.declaration, SemanticTokenModifiers.defaultLibrary] as const;

export const legend = { tokenTypes: [...types], tokenModifiers: [...modifiers] };

/** `textDocument/semanticTokens`: colors by what a word means, not by how it is spelled. */
export const semanticTokens: Feature = {
  offers: () => ({ semanticTokensProvider: { legend, full: { delta: true }, range: true } }),
  serve({ connection, file }) {
    const builders = new Map<string, SemanticTokensBuilder>();
    const fill = (uri: string, found: BoundFile): SemanticTokensBuilder => {
      const builder = builders.get(uri) ?? new SemanticTokensBuilder();
      builders.set(uri, builder);
      push(builder, found, tokensOf(found));
      return builder;
    };
    connection.languages.semanticTokens.on(async ({ textDocument: { uri } }) => {
      const found = await file(uri);
      builders.delete(uri);
      return found ? fill(uri, found).build() : { data: [] };
    });
    connection.languages.semanticTokens.onDelta(async ({ textDocument: { uri }, previousResultId }) => {
      const found = await file(uri);
      builders.get(uri)?.previousResult(previousResultId);
      return found ? fill(uri, found).buildEdits() : { data: [] };
    });
    connection.languages.semanticTokens.onRange(async ({ textDocument: { uri }, range }) => {
      const found = await file(uri);
      if (!found) return { data: [] };
      const builder = new SemanticTokensBuilder();
      const within = spanOf(found, range);
      push(
        builder,
        found,
        tokensOf(found).filter((t) => t.span.end > within.start && t.span.start < within.end),
      );
      return builder.build();
    });
  },
};

export interface Colored {
  readonly span: Span;
  readonly type: TokenType;
  readonly declaration?: boolean;
  readonly library?: boolean;
}

/** In the order of the text, none over another. */
export function tokensOf(file: BoundFile): readonly Colored[] {
  const found: Colored[] = [];
  const line = (pieces: readonly MatchedSpan[]): void => {
    for (const piece of pieces) found.push(pieceToken(piece));
  };
  const visit = (block: BoundBlock): void => {
    found.push({ span: block.keywordSpan, type: SemanticTokenTypes.keyword });
    if (block.nameSpan) {
      const type = typeOf(block.declaration?.kind);
      found.push({ span: block.nameSpan, type, declaration: true });
    }
    if (block.titleSpan) found.push({ span: block.titleSpan, type: SemanticTokenTypes.string });
    for (const { declaration, typeSpan } of block.parameters) {
      found.push({ span: declaration.nameSpan, type: SemanticTokenTypes.parameter, declaration: true });
      if (typeSpan) found.push({ span: typeSpan, type: SemanticTokenTypes.type });
    }
    if (block.type) found.push(referenceToken(block.type));
    for (const { match, keySpan, schema } of block.properties) {
      found.push({ span: keySpan, type: keyType(schema.key) });
      line(match?.pieces ?? []);
    }
    block.blocks.forEach(visit);
  };
  for (const { match, keySpan } of file.lets) {
    found.push({ span: keySpan, type: SemanticTokenTypes.keyword });
    line(match?.pieces ?? []);
  }
  file.blocks.forEach(visit);
  return apart(found);
}

/** Sorted; of two that overlap the first stands. */
function apart(tokens: readonly Colored[]): readonly Colored[] {
  const kept: Colored[] = [];
  for (const token of [...tokens].sort((a, b) => a.span.start - b.span.start || b.span.end - a.span.end)) {
    if (token.span.end > token.span.start && token.span.start >= (kept.at(-1)?.span.end ?? 0))
      kept.push(token);
  }
  return kept;
}

function push(builder: SemanticTokensBuilder, file: BoundFile, tokens: readonly Colored[]): void {
  const document = documentOf(file);
  for (const { span, type, declaration, library } of tokens) {
    const { line, character } = document.positionAt(span.start);
    const bits = (declaration ? 1 : 0) | (library ? 2 : 0);
    builder.push(line, character, span.end - span.start, types.indexOf(type), bits);
  }
}

const keyType = (key: string): TokenType =>
  key === 'let' ? SemanticTokenTypes.keyword : SemanticTokenTypes.property;

function pieceToken(piece: MatchedSpan): Colored {
  if (piece.reference) return { ...referenceToken(piece.reference), span: piece.span };
  return {
    span: piece.span,
    type: pieceTypes[piece.kind],
    ...(piece.kind === 'name' ? { declaration: true } : {}),
  };
}

const pieceTypes: Readonly<Record<MatchedSpan['kind'], TokenType>> = {
  key: SemanticTokenTypes.property,
  word: SemanticTokenTypes.keyword,
  choice: SemanticTokenTypes.enumMember,
  number: SemanticTokenTypes.number,
  unit: SemanticTokenTypes.type,
  reference: SemanticTokenTypes.variable,
  name: SemanticTokenTypes.variable,
  text: SemanticTokenTypes.string,
  rule: SemanticTokenTypes.enumMember,
  operator: SemanticTokenTypes.operator,
};

const referenceToken = ({ span, target, kinds }: Reference): Colored => ({
  span,
  type: typeOf(target?.kind ?? kinds[0]),
  ...(target?.uri.startsWith('cribwright:') ? { library: true } : {}),
});

function typeOf(kind: Kind | undefined): TokenType {
  switch (kind) {
    case 'pattern':
      return SemanticTokenTypes.function;
    case 'parameter':
      return SemanticTokenTypes.parameter;
    case 'policy':
    case 'site':
    case 'cache':
      return SemanticTokenTypes.namespace;
    case 'part':
    case 'axle':
      return SemanticTokenTypes.property;
    case 'timber':
    case 'species':
    case 'surface':
    case 'cargo type':
    case 'vehicle type':
    case 'strut type':
    case 'strap type':
    case 'chain type':
    case 'wire rope type':
    case 'step chock type':
      return SemanticTokenTypes.class;
    default:
      return SemanticTokenTypes.variable;
  }
}
