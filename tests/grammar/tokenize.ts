import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate, { type IGrammar } from 'vscode-textmate';

// Both are packed in a way that hides the names of their exports from Node.
const { createOnigScanner, createOnigString, loadWASM } = oniguruma;
const { INITIAL, Registry } = textmate;
const require = createRequire(import.meta.url);
const grammarPath = new URL('../../syntaxes/cribwright.tmLanguage.json', import.meta.url);

/** The coloring grammar as an editor loads it. */
export async function loadGrammar(): Promise<IGrammar> {
  const wasm = readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm'));
  await loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async () => JSON.parse(readFileSync(grammarPath, 'utf8')),
  });
  const grammar = await registry.loadGrammar('source.cribwright');
  if (!grammar) throw new Error('the grammar did not load');
  return grammar;
}

export interface Scoped {
  readonly text: string;
  /** Without the language's own ending; `-` where only the file's scope holds. */
  readonly scope: string;
}

/** Each line of a text in pieces, with the innermost scope of each. Blanks between pieces are left out. */
export function scopesOf(grammar: IGrammar, text: string): readonly (readonly Scoped[])[] {
  let stack = INITIAL;
  return text.split('\n').map((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    return tokens.flatMap((t) => {
      const piece = line.slice(t.startIndex, t.endIndex);
      const scope = t.scopes.at(-1)?.replace(/\.cribwright$/, '') ?? '';
      return piece.trim() === '' ? [] : [{ text: piece, scope: scope === 'source' ? '-' : scope }];
    });
  });
}

/** Source with its scopes below each line, as it is kept for review. */
export const shown = (grammar: IGrammar, text: string): string =>
  scopesOf(grammar, text)
    .map((pieces, i) => {
      const line = text.split('\n')[i] ?? '';
      return [`> ${line}`, ...pieces.map((p) => `    ${p.text.trim()}  ${p.scope}`)].join('\n');
    })
    .join('\n');
