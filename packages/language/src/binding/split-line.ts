import { name } from '@cribwright/messages';
import type { SyntaxStatement } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { AllowedLines } from '../schema/schema.js';
import { keyAt } from './statement-key.js';

interface ReadOn {
  readonly statement: SyntaxStatement;
  readonly problem: LanguageProblem;
}

/** `crib` on one line and `A {` on the next: read as one. */
export function nameOnNextLine(
  one: SyntaxStatement,
  next: SyntaxStatement,
  sayable: AllowedLines,
): ReadOn | undefined {
  const key = keyAt(one.terms, sayable);
  const first = next.terms[0];
  if (!key?.block || key.length !== one.terms.length || one.body || key.block.head.name !== 'required')
    return undefined;
  if (first?.kind !== 'word' || !next.body || keyAt(next.terms, sayable)) return undefined;
  const last = one.terms.at(-1);
  if (!last) return undefined;
  const near = `${key.block.keyword} ${first.text}`;
  const gap = { start: last.end, end: first.start };
  return {
    statement: { terms: [...one.terms, ...next.terms], body: next.body, start: one.start, end: next.end },
    problem: problem(
      'name-next-line',
      { start: one.start, end: last.end },
      { keyword: name(key.block.keyword), near: name(near) },
      { fixes: [replace(problemMessage('line-continued--fix', {}), gap, ' ')] },
    ),
  };
}

/** The rest of a line that was broken in its middle: it starts with a number, where no line does. */
export function lineContinued(
  s: SyntaxStatement,
  before: SyntaxStatement,
  text: string,
): LanguageProblem | undefined {
  const first = s.terms[0];
  const last = before.terms.at(-1);
  if (
    first?.kind !== 'number' ||
    !last ||
    before.body ||
    s.body ||
    text.slice(last.end, first.start).trim() !== ''
  )
    return undefined;
  const gap = { start: last.end, end: first.start };
  const fix = replace(problemMessage('line-continued--fix', {}), gap, ' ');
  return problem('line-continued', { start: s.start, end: s.end }, {}, { fixes: [fix] });
}

/** `1.`, `1)` and `Step 1`: the number of a step and no more. */
export function stepNumber(s: SyntaxStatement): ReadOn | undefined {
  const [first, second] = s.terms;
  if (first?.kind === 'number' && second && /^[).:]$/.test(second.text)) {
    const rest = s.terms.filter((t) => t !== second);
    return {
      statement: { ...s, terms: rest },
      problem: problem(
        'step-number-sign',
        { start: second.start, end: second.end },
        { text: name(second.text), near: name(first.text) },
        {
          fixes: [replace(problemMessage('word-unexpected--drop', { text: name(second.text) }), second, '')],
        },
      ),
    };
  }
  if (first?.kind !== 'word' || !/^(?:step|paso|no|nr)$/i.test(first.text) || second?.kind !== 'number')
    return undefined;
  const span = { start: first.start, end: second.start };
  return {
    statement: { ...s, terms: s.terms.slice(1), start: second.start },
    problem: problem(
      'step-number-sign',
      { start: first.start, end: first.end },
      { text: name(first.text), near: name(second.text) },
      { fixes: [replace(problemMessage('word-unexpected--drop', { text: name(first.text) }), span, '')] },
    ),
  };
}

/** Without the bullet, or another sign that means nothing, in front of it: that is told where signs are. */
export function withoutSigns(s: SyntaxStatement): SyntaxStatement {
  const [first, second] = s.terms;
  const sign =
    first && (first.kind === 'other' ? !/^[#<“„«]$/.test(first.text) : /^[-*–—]$/.test(first.text));
  if (!sign || second?.kind !== 'word') return s;
  return { ...s, terms: s.terms.slice(1), start: second.start };
}
