import { count, name } from '@cribwright/messages';
import { deepest, type LayoutIssue, type Span } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';

/** What is wrong with the braces of a text. */
export function braceProblems(issues: readonly LayoutIssue[], text: string): readonly LanguageProblem[] {
  const brackets = issues.filter((issue) => issue.kind === 'bracket');
  return issues
    .filter((issue) => issue.kind !== 'bracket' || issue === brackets[0])
    .map((issue) => (issue.kind === 'bracket' ? bracketProblem(brackets, text) : issueProblem(issue, text)));
}

/** All of them are put right at once: one half of a pair would be worse than none. */
function bracketProblem(all: readonly LayoutIssue[], text: string): LanguageProblem {
  const [first] = all;
  const edits = all.map(({ start, end }) => ({
    span: { start, end },
    text: text.slice(start, end) === '[' ? '{' : '}',
  }));
  const span = { start: first?.start ?? 0, end: first?.end ?? 0 };
  const fixes = [{ title: problemMessage('brace-bracket--fix', {}), edits, safe: true }];
  return problem('brace-bracket', span, { text: name(text.slice(span.start, span.end)) }, { fixes });
}

function issueProblem(issue: Exclude<LayoutIssue, { kind: 'bracket' }>, text: string): LanguageProblem {
  const span = { start: issue.start, end: issue.end };
  switch (issue.kind) {
    case 'not closed':
      return notClosed(issue, text);
    case 'not opened':
      return notOpened(issue, text);
    case 'stray close':
      return problem(
        'brace-stray',
        span,
        {},
        { fixes: [replace(problemMessage('brace-stray--fix', {}), withItsLine(text, span), '')] },
      );
    case 'opened twice':
      return problem(
        'brace-twice',
        span,
        {},
        {
          fixes: [
            replace(
              problemMessage('brace-stray--fix', {}),
              { start: beforeGap(text, span.start), end: span.end },
              '',
            ),
          ],
        },
      );
    case 'too deep':
      return problem('braces-too-deep', span, { most: count(deepest) });
    case 'too long':
      return problem('file-too-long', span, {});
  }
}

/** Told at the last word of the block, because the brace is missing after it. */
function notClosed(
  { start, end, at }: Extract<LayoutIssue, { kind: 'not closed' }>,
  text: string,
): LanguageProblem {
  const last = beforeComments(text, end, at);
  const head = headBefore(text, start);
  const oneLine = !text.slice(start, last).includes('\n') && last > end;
  const indent = /^[ \t]*/.exec(text.slice(text.lastIndexOf('\n', start - 1) + 1))?.[0] ?? '';
  const after = !/\S|\n/.test(text.slice(last, last + 1000)) ? '\n' : '';
  const brace = oneLine ? ' }' : `\n${indent}}${after}`;
  const lineEnd = oneLine ? last : endOfLine(text, last);
  const fixes = [
    {
      title: problemMessage('brace-not-closed--fix', {}),
      edits: [{ span: { start: lineEnd, end: lineEnd }, text: brace }],
      safe: false,
    },
  ];
  const word = /[^\s{}]+$/.exec(text.slice(Math.max(0, last - 100), last))?.[0].length ?? 1;
  const instead = /^(?:end|done|fin)\b/i.exec(text.slice(at))?.[0];
  if (instead !== undefined) {
    const meant = { start: at, end: at + instead.length };
    const fix = replace(problemMessage('word-unexpected--fix', { near: name('}') }), meant, '}');
    return problem(
      'brace-not-closed--word',
      meant,
      { block: name(head), text: name(instead) },
      { fixes: [fix] },
    );
  }
  return problem(
    'brace-not-closed',
    { start: Math.max(start, last - word), end: Math.max(last, end) },
    { block: name(head) },
    { fixes },
  );
}

/** `crib A`: what stands before an opening brace, without type and title. */
const headBefore = (text: string, brace: number): string => {
  const head = text.slice(text.lastIndexOf('\n', text.slice(0, brace).trimEnd().length - 1) + 1, brace);
  const short = head
    .replace(/[":(].*$/s, '')
    .replace(/.*[;{}]/s, '')
    .trim();
  return short === '' ? '{' : short;
};

/** Where what was written between two places ends, comments behind it left out. */
function beforeComments(text: string, from: number, to: number): number {
  const kept = text
    .slice(from, to)
    .replace(/"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?(?:\*\/|$)/g, (m) =>
      m.startsWith('"') ? m : ' '.repeat(m.length),
    );
  return from + kept.trimEnd().length;
}

const endOfLine = (text: string, from: number): number => {
  const at = text.slice(from).search(/[\r\n]/);
  return at < 0 ? text.length : from + at;
};

const beforeGap = (text: string, at: number): number => text.slice(0, at).trimEnd().length;

/**
 * A brace with its whole line where it stands alone on it, else with the gap before it. Looks no farther than the gaps
 * beside it: a line may hold a million braces.
 */
function withItsLine(text: string, span: Span): Span {
  let start = span.start;
  while (start > 0 && /[ \t]/.test(text.charAt(start - 1))) start -= 1;
  let end = span.end;
  while (end < text.length && /[ \t]/.test(text.charAt(end))) end += 1;
  const isBreak = (at: number): boolean => /[\r\n]/.test(text.charAt(at));
  const alone = (start === 0 || isBreak(start - 1)) && (end === text.length || isBreak(end));
  if (!alone) return { start, end: span.end };
  const breakEnd = text.startsWith('\r\n', end) ? end + 2 : Math.min(text.length, end + 1);
  return { start, end: breakEnd };
}

/** Signs that are taken for an opening brace. */
const likeBrace = /[:(]$/;

function notOpened(
  { start, end }: Extract<LayoutIssue, { kind: 'not opened' }>,
  text: string,
): LanguageProblem {
  const last = beforeComments(text, start, end);
  const line = text.slice(start, last);
  const title = problemMessage('brace-not-opened--fix', {});
  const open = /"[^"]*$/.exec(line.replace(/"[^"]*"/g, (m) => '_'.repeat(m.length)));
  // The quote that is missing took the brace into the text.
  if (open && /\{\s*$/.test(line)) {
    const at = start + line.replace(/\s*\{\s*$/, '').length;
    if (at === start + open.index + 1) return quoteNotOpened(text, start, at);
    const fix = replace(problemMessage('text-not-closed--fix', {}), { start: at, end: at }, '"');
    return problem('text-not-closed', { start: start + open.index, end: last }, {}, { fixes: [fix] });
  }
  const sign = likeBrace.exec(line);
  const from = sign ? start + line.slice(0, sign.index).trimEnd().length : last;
  const edits = [{ span: { start: from, end: last }, text: ' {' }];
  const at = sign ? { start: last - 1, end: last } : { start, end: last };
  return problem(
    'brace-not-opened',
    at,
    { block: name(headBefore(text, last)) },
    { fixes: [{ title, edits, safe: false }] },
  );
}

/** `plan Van trailer" {`: the text starts after the first word of the line. */
function quoteNotOpened(text: string, start: number, quoteEnd: number): LanguageProblem {
  const word = /^\S+\s+/.exec(text.slice(start, quoteEnd))?.[0].length ?? 0;
  const at = start + word;
  const fix = replace(problemMessage('text-not-opened--fix', {}), { start: at, end: at }, '"');
  return problem('text-not-opened', { start: at, end: quoteEnd }, {}, { fixes: [fix] });
}
