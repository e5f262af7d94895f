import { DefaultLexer, type LexerResult } from 'langium';
import { type LayoutIssue, type LayoutToken, layOut } from './layout.js';

type Token = LexerResult['tokens'][number];

/** Beside Langium's own report: what the layout pass mended. */
export interface LayoutReport {
  readonly diagnostics: [];
  readonly issues: readonly LayoutIssue[];
}

const kinds: Readonly<Record<string, LayoutToken['kind']>> = { '{': 'open', '}': 'close', END: 'end' };

/** Langium's lexer, then the layout pass of `layout.ts`. */
export class LayoutLexer extends DefaultLexer {
  override tokenize(text: string): LexerResult {
    const raw = super.tokenize(text);
    const { made, issues } = layOut(raw.tokens.map(seen));
    const report: LayoutReport = { diagnostics: [], issues };
    const tokens = made.map((m) => ('token' in m ? m.token.token : this.invent(m.make, m.at)));
    // Nobody reads comments from the tree, and sorting very many into it takes far too long.
    return { tokens, hidden: [], errors: raw.errors, report };
  }

  /** A token of no length. The parser needs it; the text does not hold it. */
  private invent(make: 'end' | 'close' | 'open', at: number): Token {
    const name = { end: 'END', close: '}', open: '{' }[make];
    const tokenType = this.tokenTypes[name];
    if (!tokenType) throw new Error(`The grammar has no token ${name}.`);
    return {
      image: '',
      startOffset: at,
      endOffset: at,
      startLine: 1,
      endLine: 1,
      startColumn: 1,
      endColumn: 1,
      tokenType,
      tokenTypeIdx: tokenType.tokenTypeIdx ?? 0,
    };
  }
}

const seen = (token: Token): LayoutToken & { readonly token: Token } => ({
  token,
  kind: token.image === ',' ? 'comma' : (kinds[token.tokenType.name] ?? 'other'),
  start: token.startOffset,
  end: token.startOffset + token.image.length,
  column: (token.startColumn ?? 1) - 1,
  line: (token.startLine ?? 1) - 1,
});
