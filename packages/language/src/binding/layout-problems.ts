import { count, name } from '@cribwright/messages';
import type { Parsed, SyntaxStatement, Term } from '@cribwright/syntax/internal';
import { deepest, type LayoutIssue } from '@cribwright/syntax/internal';
import { unitOfMark } from '../phrase/marks.js';
import { unseenSigns } from '../phrase/unquoted.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** What is wrong with braces, quotes, comments and characters. A formatter leaves such a file alone. */
export function layoutProblems(parsed: Parsed, text: string): readonly LanguageProblem[] {
  const problems = parsed.issues.map((issue) => issueProblem(issue, text));
  const walk = (list: readonly SyntaxStatement[]): void => {
    for (const s of list) {
      // After “ comes a text as a word processor writes it: its ” is no inch mark.
      let quoted = false;
      for (const [i, t] of s.terms.entries()) {
        quoted ||= /[“„]/.test(t.text);
        problems.push(...termProblems(t, s.terms[i - 1], s.terms[i + 1], quoted));
      }
      if (s.body) walk(s.body.statements);
    }
  };
  walk(parsed.statements);
  const open = openComment(text);
  if (open) problems.push(problem('comment-not-closed', open, {}));
  return problems;
}

function issueProblem(issue: LayoutIssue, text: string): LanguageProblem {
  const span = { start: issue.start, end: issue.end };
  switch (issue.kind) {
    case 'not closed': {
      const edits = [{ span: endOf(text, issue.at), text: '\n}\n' }];
      return problem(
        'brace-not-closed',
        span,
        {},
        {
          fixes: [{ title: problemMessage('brace-not-closed--fix', {}), edits, safe: false }],
        },
      );
    }
    case 'not opened': {
      const at = endOf(text, issue.end);
      const fixes = [
        {
          title: problemMessage('brace-not-opened--fix', {}),
          edits: [{ span: at, text: ' {' }],
          safe: false,
        },
      ];
      return problem('brace-not-opened', { start: issue.start, end: at.end }, {}, { fixes });
    }
    case 'stray close':
      return problem(
        'brace-stray',
        span,
        {},
        { fixes: [replace(problemMessage('brace-stray--fix', {}), span, '')] },
      );
    case 'too deep':
      return problem('braces-too-deep', span, { most: count(deepest) });
    case 'too long':
      return problem('file-too-long', span, {});
  }
}

const endOf = (text: string, at: number) => {
  let end = at;
  while (end > 0 && /\s/.test(text.charAt(end - 1))) end--;
  return { start: end, end };
};

/** Each sign in a text in quotes that nobody can see. */
const unseenIn = (term: Term): LanguageProblem[] =>
  [...term.text.matchAll(unseenSigns)].slice(0, 1).map(({ 0: sign, index }) => {
    const character = `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`;
    const fix = replace(
      problemMessage('strange-character--hidden-fix', {}),
      term,
      term.text.replace(unseenSigns, ''),
      true,
    );
    const at = { start: term.start + index, end: term.start + index + sign.length };
    return problem('strange-character--hidden', at, { character: name(character) }, { fixes: [fix] });
  });

function termProblems(
  term: Term,
  before: Term | undefined,
  after: Term | undefined,
  quoted: boolean,
): LanguageProblem[] {
  if (term.kind === 'text' && (term.text.length < 2 || !term.text.endsWith('"'))) {
    // An inch mark after a number has its own message, where the number is read.
    if (before?.kind === 'number' && before.end === term.start) return [];
    const at = { start: term.end, end: term.end };
    return [
      problem(
        'text-not-closed',
        term,
        {},
        { fixes: [replace(problemMessage('text-not-closed--fix', {}), at, '"')] },
      ),
    ];
  }
  if (term.kind === 'text') return unseenIn(term);
  if (term.kind !== 'other') return [];
  const joins = term.text === '.' && before?.end === term.start && after?.start === term.end;
  if (joins) return [];
  const unit = quoted ? undefined : unitOfMark(before, term);
  if (unit && before) {
    const near = `${before.text} ${unit}`;
    const span = { start: before.start, end: term.end };
    const glued = after && after.start === term.end && after.kind !== 'symbol' ? ' ' : '';
    const fixes = [replace(problemMessage('feet-mark--fix', { near: name(near) }), term, ` ${unit}${glued}`)];
    return [problem('feet-mark', span, { near: name(near) }, { fixes })];
  }
  if (/[–—]/.test(term.text) && before?.kind === 'number' && after?.kind === 'number') {
    const near = `${before.text} to ${after.text}`;
    const span = { start: before.start, end: after.end };
    return [
      problem(
        'strange-character',
        term,
        { character: name(term.text) },
        { fixes: [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)] },
      ),
    ];
  }
  if (/[“”„«»]/.test(term.text)) {
    return [
      problem(
        'strange-character--quote',
        term,
        {},
        { fixes: [replace(problemMessage('strange-character--fix', {}), term, '"', true)] },
      ),
    ];
  }
  return [problem('strange-character', term, { character: name(term.text) })];
}

/** A comment that starts and never ends takes the rest of the file with it. Lines break as in the grammar. */
function openComment(text: string): { start: number; end: number } | undefined {
  const tokens =
    /\/\/[^\r\n\v\f\u0085\u2028\u2029]*|"[^"\r\n\v\f\u0085\u2028\u2029]*"?|\/\*[\s\S]*?\*\/|\/\*/g;
  for (const m of text.matchAll(tokens)) if (m[0] === '/*') return { start: m.index, end: m.index + 2 };
  return undefined;
}
