import { deepest, longest } from './layout.js';
import { type Parsed, parse } from './parse.js';
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
 * Reads a text that was edited, anew only where it was: the innermost block around the edit. What stands before it is
 * kept, what stands after it moves along. Comes to the same as reading all of it.
 */
export function reparse(before: { readonly text: string; readonly parsed: Parsed }, text: string): Parsed {
  return inside(before.text, before.parsed, text) ?? parse(text);
}

function inside(old: string, parsed: Parsed, text: string): Parsed | undefined {
  // Where braces do not balance, what a brace closes hangs on the rest of the text.
  if (parsed.issues.length > 0 || text.length > longest) return undefined;
  const edit = editOf(old, text);
  const found = around(parsed.statements, edit, 0);
  if (!found) return undefined;
  const { statement, depth } = found;
  const again = parse(text.slice(statement.start, statement.end + edit.by));
  const [alone, more] = again.statements;
  if (again.issues.length > 0 || !alone?.body || more || alone.start !== 0) return undefined;
  if (alone.end !== statement.end + edit.by - statement.start || depth + depthOf(alone) > deepest)
    return undefined;
  const now = moved(alone, statement.start);
  return { statements: spliced(parsed.statements, statement, now, edit.by), issues: [] };
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
