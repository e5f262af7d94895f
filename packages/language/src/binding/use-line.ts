import { name } from '@cribwright/messages';
import type { SyntaxStatement } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** What to say of a `use` line that is no file in quotes. */
export function useMalformed(s: SyntaxStatement): LanguageProblem {
  const [, second, third] = s.terms;
  const last = s.terms.at(-1);
  const end = last?.end ?? s.end;
  const texts = s.terms.slice(1).filter((t) => t.kind === 'text');
  if (second?.kind === 'text' && third && texts.length > 1 && !s.body) {
    const edits = texts.slice(1).map((t) => {
      const before = s.terms[s.terms.indexOf(t) - 1];
      const from = before?.kind === 'text' ? before.end : (s.terms[s.terms.indexOf(t) - 2]?.end ?? t.start);
      return { span: { start: from, end: t.start }, text: '\nuse ' };
    });
    const title = problemMessage('use-malformed--two-fix', {});
    return problem(
      'use-malformed--two',
      { start: third.start, end },
      {},
      { fixes: [{ title, edits, safe: true }] },
    );
  }
  return problem('use-malformed', { start: second?.start ?? s.start, end }, {}, unquotedPath(s));
}

/** `use library/vehicles.crib`: the path only lacks its quotes. */
function unquotedPath(s: SyntaxStatement) {
  const path = s.terms.slice(1).filter((t) => !/^[“”„«»']$/.test(t.text));
  const [first, last] = [s.terms[1], s.terms.at(-1)];
  const near = `"${path.map((t) => t.text).join('')}"`;
  const whole = /^"[\w./-]+\.crib"$/.test(near) && !s.body;
  if (!first || !last || !whole) return {};
  const span = { start: first.start, end: last.end };
  return { fixes: [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)] };
}
