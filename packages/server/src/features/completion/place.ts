import type { BoundBlock, BoundFile } from '@cribwright/language';
import { textTokens } from '@cribwright/language/internal';
import type { SyntaxStatement, Term } from '@cribwright/syntax/internal';

/** Where the cursor stands, as far as it decides what may be written there. */
export interface CursorPlace {
  readonly container: BoundBlock | 'file';
  /** Whole words of the statement before the cursor; the one that is being typed is not among them. */
  readonly before: readonly Term[];
  /** Where the word that is being typed begins; the cursor itself where none is. */
  readonly wordStart: number;
  /** Where the statement begins; the cursor where it begins one. */
  readonly statementStart: number;
  /** Inside quotes: where their content begins. */
  readonly quoted: { readonly start: number; readonly end: number } | undefined;
}

/** `undefined` inside a comment, where nothing is completed. */
export function placeAt(file: BoundFile, offset: number): CursorPlace | undefined {
  if (inComment(file, offset)) return undefined;
  const container = bodyAround(file, offset);
  const statement = statementAt(file, offset);
  const terms = statement?.terms.filter((t) => t.start < offset) ?? [];
  const last = terms.at(-1);
  const typing =
    last &&
    offset <= last.end &&
    (last.kind === 'word' || last.kind === 'text' || last.kind === 'size' || last.kind === 'number');
  const quote = typing && last.kind === 'text' ? quotedPart(last, offset) : undefined;
  return {
    container,
    before: typing ? terms.slice(0, -1) : terms,
    wordStart: typing ? (quote?.start ?? last.start) : offset,
    statementStart: terms[0]?.start ?? offset,
    quoted: quote,
  };
}

function quotedPart(term: Term, offset: number): { start: number; end: number } | undefined {
  const closed = term.text.length > 1 && term.text.endsWith('"');
  if (closed && offset === term.end) return undefined;
  return { start: term.start + 1, end: closed ? term.end - 1 : term.end };
}

const inComment = (file: BoundFile, offset: number): boolean =>
  textTokens(file.text, file.statements).some(
    (p) =>
      p.start < offset &&
      ((p.kind === 'line comment' && offset <= p.end) ||
        (p.kind === 'block comment' && (offset < p.end || !p.text.endsWith('*/')))),
  );

/** The innermost block whose braces are around the cursor. */
function bodyAround(file: BoundFile, offset: number): BoundBlock | 'file' {
  let found: BoundBlock | 'file' = 'file';
  let among: readonly BoundBlock[] = file.blocks;
  for (;;) {
    const next = among.find(({ bodySpan }) => {
      if (!bodySpan || offset <= bodySpan.start) return false;
      const closed = file.text[bodySpan.end - 1] === '}';
      return closed ? offset < bodySpan.end : offset <= bodySpan.end;
    });
    if (!next) return found;
    found = next;
    among = next.blocks;
  }
}

/** The statement that the cursor goes on with: begun before it, on its line or ending in a comma. */
export function statementAt(file: BoundFile, offset: number): SyntaxStatement | undefined {
  let among = file.statements;
  for (;;) {
    const begun = among.filter((s) => s.start < offset).at(-1);
    if (!begun) return undefined;
    const { body } = begun;
    if (body && body.start < offset) {
      const closed = file.text[body.end - 1] === '}';
      if (offset >= body.end && closed) return undefined;
      among = body.statements;
      continue;
    }
    const last = begun.terms.at(-1);
    const gap = file.text.slice(last?.end ?? offset, offset);
    const broken = /[\r\n;}]/.test(gap) && !(last?.text === ',' && !/[;}]/.test(gap));
    return broken ? undefined : begun;
  }
}
