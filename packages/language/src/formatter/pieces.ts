import { append, type Span, type SyntaxStatement, type Term } from '@cribwright/syntax/internal';

/** All that a text holds beside white space, in order. */
export interface TextToken extends Span {
  readonly kind: Term['kind'] | 'open' | 'close' | 'semicolon' | 'line comment' | 'block comment';
  readonly text: string;
  /** The statement that a term belongs to. */
  readonly of?: SyntaxStatement;
}

/** Takes a text apart into terms, braces, semicolons and comments. Nothing but white space lies between them. */
export function textTokens(text: string, statements: readonly SyntaxStatement[]): readonly TextToken[] {
  const terms: TextToken[] = [];
  const visit = (of: SyntaxStatement): void => {
    for (const term of of.terms) terms.push({ ...term, of });
    of.body?.statements.forEach(visit);
  };
  statements.forEach(visit);
  const found: TextToken[] = [];
  let from = 0;
  for (const term of terms) {
    append(found, between(text, from, term.start));
    found.push(term);
    from = term.end;
  }
  append(found, between(text, from, text.length));
  return found;
}

const betweenTerms = /\/\/[^\r\n\v\f\u0085\u2028\u2029]*|\/\*(?:[^*]|\*+[^*/])*(?:\*+\/)?|[{};]|[^\s]/g;

function between(text: string, from: number, to: number): TextToken[] {
  return [...text.slice(from, to).matchAll(betweenTerms)].map(({ 0: found, index }) => {
    const start = from + index;
    return { kind: kindOf(found), text: found, start, end: start + found.length };
  });
}

function kindOf(found: string): TextToken['kind'] {
  if (found === '{') return 'open';
  if (found === '}') return 'close';
  if (found === ';') return 'semicolon';
  if (found.startsWith('//')) return 'line comment';
  if (found.startsWith('/*')) return 'block comment';
  // A character that the parser passed over: kept where it stands.
  return 'other';
}
