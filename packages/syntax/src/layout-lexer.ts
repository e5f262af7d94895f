import { DefaultLexer, type LexerResult } from 'langium';
import { type LayoutIssue, type LayoutToken, layOut } from './layout.js';
import { plainSigns } from './plain-signs.js';

type Token = LexerResult['tokens'][number];

/** Beside Langium's own report: what the layout pass mended. */
export interface LayoutReport {
  readonly diagnostics: [];
  readonly issues: readonly LayoutIssue[];
  /** How many there were before the layout pass. */
  readonly tokens: number;
}

const kinds: Readonly<Record<string, LayoutToken['kind']>> = { '{': 'open', '}': 'close', END: 'end' };

const unitMarks = ['’', '′', '”', '″'];
const endOf = (token: Token): number => token.startOffset + token.image.length;

/** Signs that mean nothing else, and stand where a brace is meant. */
const brackets: Readonly<Record<string, '{' | '}'>> = { '[': '{', ']': '}' };

/** Langium's lexer, then the layout pass of `layout.ts`. */
export class LayoutLexer extends DefaultLexer {
  override tokenize(text: string): LexerResult {
    const plain = plainSigns(text);
    const raw = super.tokenize(plain);
    this.markUnits(raw.tokens);
    const { made, issues } = layOut(raw.tokens.map((token) => seen(this.braced(token))));
    const report: LayoutReport = { diagnostics: [], issues, tokens: raw.tokens.length };
    const tokens = made.map((m) => ('token' in m ? m.token.token : this.invent(m.make, m.at)));
    // Nobody reads comments from the tree, and sorting very many into it takes far too long.
    return { tokens, hidden: [], errors: raw.errors, report };
  }

  /** Marks for feet and inches right after a number are signs of the language; elsewhere they mean nothing. */
  private markUnits(tokens: readonly Token[]): void {
    let quotedLine = -1;
    for (const [i, token] of tokens.entries()) {
      if (token.tokenType.name !== 'OTHER') continue;
      // After “ comes a text as a word processor writes it: its ” is no inch mark.
      if (/[“„]/.test(token.image)) quotedLine = token.startLine ?? -1;
      const before = tokens[i - 1];
      if (!unitMarks.includes(token.image) || quotedLine === token.startLine || !before) continue;
      const number = before.tokenType.name === 'NUMBER' && endOf(before) === token.startOffset;
      const twice = before.image === token.image && endOf(before) === token.startOffset;
      if (number || (twice && before.tokenType.name === 'SYMBOL')) Object.assign(token, this.typed('SYMBOL'));
    }
  }

  /** A bracket as the brace that it stands for. */
  private braced(token: Token): Token {
    const brace = token.tokenType.name === 'OTHER' ? brackets[token.image] : undefined;
    return brace === undefined ? token : { ...token, ...this.typed(brace) };
  }

  private typed(name: string): Pick<Token, 'tokenType' | 'tokenTypeIdx'> {
    const tokenType = this.tokenTypes[name];
    if (!tokenType) throw new Error(`The grammar has no token ${name}.`);
    return { tokenType, tokenTypeIdx: tokenType.tokenTypeIdx ?? 0 };
  }

  /** A token of no length. The parser needs it; the text does not hold it. */
  private invent(make: 'end' | 'close' | 'open', at: number): Token {
    const name = { end: 'END', close: '}', open: '{' }[make];
    return {
      ...this.typed(name),
      image: '',
      startOffset: at,
      endOffset: at,
      startLine: 1,
      endLine: 1,
      startColumn: 1,
      endColumn: 1,
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
  bracket: token.image.length === 1 && Object.hasOwn(brackets, token.image),
});
