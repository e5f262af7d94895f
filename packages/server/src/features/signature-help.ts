import type { BoundBlock, BoundFile } from '@cribwright/language';
import { visibleAt } from '@cribwright/language/internal';
import type { Term } from '@cribwright/syntax/internal';
import type { SignatureHelp } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import type { FeatureContext } from '../context/feature-context.js';
import { plain } from '../context/markdown.js';
import { offsetAt } from '../context/positions.js';
import { say } from '../l10n/say.js';

/** `textDocument/signatureHelp`: what a pattern asks for, while its values are being filled in. */
export const signatureHelp: Feature = {
  offers: () => ({ signatureHelpProvider: { triggerCharacters: ['(', ','], retriggerCharacters: ['='] } }),
  serve(session) {
    session.connection.onSignatureHelp(async ({ textDocument, position }) => {
      const found = await session.file(textDocument.uri);
      return found ? signatureAt(session, found, offsetAt(found, position)) : null;
    });
  },
};

export function signatureAt(desk: FeatureContext, file: BoundFile, offset: number): SignatureHelp | null {
  const call = callAround(file, offset);
  const pattern =
    call &&
    visibleAt(desk.workspace, file, offset).find((d) => d.kind === 'pattern' && call.names.includes(d.name))
      ?.block;
  if (!call || !pattern || pattern.parameters.length === 0) return null;
  const parameters = pattern.parameters.map(({ name, typeWord }) => ({ label: `${name}: ${typeWord}` }));
  return {
    signatures: [
      {
        label: `${pattern.name ?? ''}(${parameters.map((p) => p.label).join(', ')})`,
        documentation: { kind: 'markdown', value: plain(say(pattern.schema.doc, desk.locale)) },
        parameters,
        activeParameter: activeIn(pattern, call.written),
      },
    ],
    activeSignature: 0,
  };
}

/** The words before the last open parenthesis, `PairUnder North (`, and the words inside it up to the cursor. */
function callAround(
  file: BoundFile,
  offset: number,
): { readonly names: readonly string[]; readonly written: readonly Term[] } | undefined {
  const before = termsBefore(file, offset);
  let depth = 0;
  for (let i = before.length - 1; i > 0; i--) {
    const text = before[i]?.text;
    if (text === ')') depth++;
    if (text === '(' && depth-- === 0) {
      const names = before.slice(Math.max(0, i - 2), i).map((t) => t.text);
      return { names, written: before.slice(i + 1) };
    }
  }
  return undefined;
}

function termsBefore(file: BoundFile, offset: number): readonly Term[] {
  let found: readonly Term[] = [];
  const visit = (statements: BoundFile['statements']): void => {
    for (const { start, terms, body } of statements) {
      if (start > offset) return;
      // The parser ends a statement at its last word; the cursor may stand past it on the same line.
      found = terms.filter((t) => t.end <= offset);
      if (body && body.start < offset && offset < body.end) visit(body.statements);
    }
  };
  visit(file.statements);
  const last = found.at(-1);
  return last && /[\r\n]/.test(file.text.slice(last.end, offset)) ? [] : found;
}

/** By name where the value's name is written, by place otherwise. */
function activeIn({ parameters }: BoundBlock, written: readonly Term[]): number {
  let depth = 0;
  let from = 0;
  let index = 0;
  written.forEach((term, i) => {
    if (term.text === '(') depth++;
    if (term.text === ')') depth--;
    if (term.text === ',' && depth === 0) {
      from = i + 1;
      index++;
    }
  });
  const named = written[from + 1]?.text === '=' ? written[from]?.text : undefined;
  const at = parameters.findIndex((p) => p.name === named);
  return at >= 0 ? at : Math.min(index, parameters.length - 1);
}
