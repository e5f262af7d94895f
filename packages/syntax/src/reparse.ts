import { deepest, longest } from './layout.js';
import { counted, type Parsed, parse, tokensAtMost } from './parse.js';
import type { SyntaxStatement, Term } from './syntax.js';

interface Edit {
  /** Where both texts begin to differ. */
  readonly start: number;
  /** Past the last difference, in the text before. */
  readonly end: number;
  /** How much longer the text has become. */
  readonly by: number;
}

/**
 * Reads a text that was edited, anew only where it was: the innermost block around the edit, or else what stands at the
 * edit between two blocks. What stands before it is kept, what stands after it moves along. Comes to the same as reading
 * all of it.
 */
export function reparse(before: { readonly text: string; readonly parsed: Parsed }, text: string): Parsed {
  // Where braces do not balance, what a brace closes hangs on the rest of the text.
  if (before.parsed.issues.length > 0) return parse(text);
  const edit = editOf(before.text, text);
  return inside(before.parsed, text, edit) ?? between(before, text, edit) ?? parse(text);
}

function inside(parsed: Parsed, text: string, edit: Edit): Parsed | undefined {
  const found = around(parsed.statements, edit, 0);
  if (!found) return undefined;
  const { statement, depth } = found;
  const again = parse(text.slice(statement.start, statement.end + edit.by));
  const [alone, more] = again.statements;
  if (again.issues.length > 0 || !alone?.body || more || alone.start !== 0) return undefined;
  if (alone.end !== statement.end + edit.by - statement.start || depth + depthOf(alone) > deepest)
    return undefined;
  const now = moved(alone, statement.start);
  return joined(parsed, again, spliced(parsed.statements, statement, now, edit.by));
}

/** An edit outside of all blocks, or of a block's first line: the statements that it touches are read anew. */
function between(
  before: { readonly text: string; readonly parsed: Parsed },
  text: string,
  edit: Edit,
): Parsed | undefined {
  const { statements } = before.parsed;
  const touched = statements.findIndex((s) => s.end >= edit.start);
  const head = touched < 0 ? statements : statements.slice(0, touched);
  const behind = statements.findIndex((s) => s.start > edit.end);
  const tail = behind < 0 ? [] : statements.slice(behind);
  const [last, next] = [head.at(-1), tail[0]];
  const from = last?.end ?? 0;
  const part = text.slice(from, (next?.start ?? before.text.length) + edit.by);
  // Such a comment may end anywhere.
  if (part.includes('/*') || part.includes('*/')) return undefined;
  const again = parse(part);
  const read = again.statements;
  if (again.issues.length > 0) return undefined;
  if (last && (!restOfLine.test(part) || goesOn(last) || !beginsAnew(read[0]))) return undefined;
  if (next && (!startsLine(part, last !== undefined) || goesOn(read.at(-1)) || !beginsAnew(next)))
    return undefined;
  return joined(before.parsed, again, [
    ...head,
    ...read.map((s) => moved(s, from)),
    ...tail.map((s) => moved(s, edit.by)),
  ]);
}

/** The end of a line behind a statement. */
const restOfLine = /^[ \t]*(?:\/\/[^\r\n]*)?[\r\n]/;

/** A comma at the end of a line joins the next one to it. */
const goesOn = (s: SyntaxStatement | undefined): boolean =>
  s !== undefined && !s.body && s.terms.at(-1)?.text === ',';

/** What starts with a word belongs to no statement before it, as a brace does that stands alone. */
const beginsAnew = (s: SyntaxStatement | undefined): boolean =>
  s === undefined || s.terms[0]?.kind === 'word';

/** Whether what follows the text stands first in its line; `within` where something stands before the text. */
function startsLine(text: string, within: boolean): boolean {
  let end = text.length;
  while (end > 0 && (text[end - 1] === ' ' || text[end - 1] === '\t')) end--;
  return end === 0 ? !within : text[end - 1] === '\n' || text[end - 1] === '\r';
}

/** `undefined` where there may be too many tokens by now: that is told of the whole text. */
function joined(before: Parsed, again: Parsed, statements: readonly SyntaxStatement[]): Parsed | undefined {
  const most = tokensAtMost(before) + tokensAtMost(again);
  return most > longest ? undefined : counted({ statements, issues: [] }, most);
}

function editOf(old: string, text: string): Edit {
  const most = Math.min(old.length, text.length);
  let start = 0;
  while (start < most && old.charCodeAt(start) === text.charCodeAt(start)) start++;
  let same = 0;
  while (
    same < most - start &&
    old.charCodeAt(old.length - 1 - same) === text.charCodeAt(text.length - 1 - same)
  )
    same++;
  return { start, end: old.length - same, by: text.length - old.length };
}

/** The innermost block whose body holds all of the edit, and how deep it stands. */
function around(
  list: readonly SyntaxStatement[],
  edit: Edit,
  depth: number,
): { readonly statement: SyntaxStatement; readonly depth: number } | undefined {
  const statement = list.find((s) => s.body && s.body.start < edit.start && edit.end < s.body.end);
  // Braces that stand alone have no first word that keeps them apart from the line before.
  if (!statement?.body || statement.terms.length === 0) return undefined;
  return around(statement.body.statements, edit, depth + 1) ?? { statement, depth };
}

const depthOf = ({ body }: SyntaxStatement): number =>
  body ? 1 + body.statements.reduce((most, s) => Math.max(most, depthOf(s)), 0) : 0;

/** The list with one statement, somewhere inside it, put in the place of another. */
function spliced(
  list: readonly SyntaxStatement[],
  old: SyntaxStatement,
  now: SyntaxStatement,
  by: number,
): readonly SyntaxStatement[] {
  return list.map((s) => {
    if (s === old) return now;
    if (s.end <= old.start) return s;
    if (s.start >= old.end) return moved(s, by);
    const { body } = s;
    return body
      ? {
          terms: s.terms,
          body: {
            statements: spliced(body.statements, old, now, by),
            start: body.start,
            end: body.end + by,
          },
          start: s.start,
          end: s.end + by,
        }
      : s;
  });
}

function moved(s: SyntaxStatement, by: number): SyntaxStatement {
  if (by === 0) return s;
  return {
    terms: s.terms.map((t): Term => ({ kind: t.kind, text: t.text, start: t.start + by, end: t.end + by })),
    body: s.body && {
      statements: s.body.statements.map((inner) => moved(inner, by)),
      start: s.body.start + by,
      end: s.body.end + by,
    },
    start: s.start + by,
    end: s.end + by,
  };
}
