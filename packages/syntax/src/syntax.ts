import { type CstNode, isCompositeCstNode, isLeafCstNode } from 'langium';
import type { Block, Document, Statement } from './generated/ast.js';
import { plainSigns } from './plain-signs.js';

/** A stretch of the text, in offsets. `end` is past the last character. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One piece of a statement. `size` is `4x4`, `date` is `2027-03-01`. */
export interface Term extends Span {
  readonly kind: 'word' | 'number' | 'size' | 'date' | 'text' | 'symbol' | 'other';
  readonly text: string;
}

export interface SyntaxStatement extends Span {
  readonly terms: readonly Term[];
  readonly body: SyntaxBlock | undefined;
}

/** Between braces. `start` is at the `{`, `end` past the `}`. */
export interface SyntaxBlock extends Span {
  readonly statements: readonly SyntaxStatement[];
}

const kinds: Readonly<Record<string, Term['kind']>> = {
  WORD: 'word',
  NUMBER: 'number',
  SIZE: 'size',
  DATE: 'date',
  TEXT: 'text',
  SYMBOL: 'symbol',
  OTHER: 'other',
};

/** The parsed document as plain statements and terms: all that binding reads. */
export const syntaxOf = (document: Document): readonly SyntaxStatement[] => document.items.map(statement);

const statement = (node: Statement): SyntaxStatement => {
  const cst = node.$cstNode;
  const terms = cst && isCompositeCstNode(cst) ? cst.content.flatMap(term) : [];
  const body = node.body ? block(node.body) : undefined;
  const start = terms[0]?.start ?? body?.start ?? 0;
  return { terms, body, start, end: body?.end ?? terms.at(-1)?.end ?? start };
};

const block = (node: Block): SyntaxBlock => ({
  statements: node.items.map(statement),
  start: node.$cstNode?.offset ?? 0,
  end: node.$cstNode?.end ?? 0,
});

const term = (node: CstNode): readonly Term[] => {
  if (node.hidden || !isLeafCstNode(node)) return [];
  const kind = kinds[node.tokenType.name];
  // Full-width signs are read as the plain ones.
  const text = kind !== 'text' && node.text.charCodeAt(0) >= 0xff01 ? plainSigns(node.text) : node.text;
  return kind ? [{ kind, text, start: node.offset, end: node.end }] : [];
};
