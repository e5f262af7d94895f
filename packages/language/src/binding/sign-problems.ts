import { name } from '@cribwright/messages';
import { append, type Span, type SyntaxStatement, type Term } from '@cribwright/syntax/internal';
import { findUnit } from '@cribwright/units';
import { unseenSigns } from '../phrase/unquoted.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { wholeLines } from './unused.js';

/** What is wrong with the quotes and characters of one statement. */
export function signProblems(s: SyntaxStatement, text: string): readonly LanguageProblem[] {
  const last = s.terms.at(-1);
  if (!last) return [];
  const sentence = sentenceProblem(s);
  if (sentence) return [sentence];
  const remark = remarkIn(s.terms, text);
  const terms = remark ? s.terms.slice(0, remark.at) : s.terms;
  const found: LanguageProblem[] = [];
  const seen = { quote: false, hidden: false };
  for (const [i, t] of terms.entries()) append(found, termProblems(terms, i, t, text, seen));
  if (remark) found.push(remark.problem);
  return found;
}

/** `The trailer is loaded with paper.`: a sentence is a remark. */
function sentenceProblem({ terms, body, start }: SyntaxStatement): LanguageProblem | undefined {
  const last = terms.at(-1);
  const words = terms.slice(0, -1);
  const isSentence = !body && last?.text === '.' && words.length > 3 && words.every((t) => t.kind === 'word');
  if (!isSentence) return undefined;
  const title = problemMessage('strange-character--remark-fix', {});
  const edits = [{ span: { start, end: start }, text: '// ' }];
  return problem(
    'strange-character--sentence',
    { start, end: last.end },
    {},
    { fixes: [{ title, edits, safe: false }] },
  );
}

/** `# note`, `-- note`, `<!-- note -->`: the comments of other languages. */
function remarkIn(
  terms: readonly Term[],
  text: string,
): { readonly at: number; readonly problem: LanguageProblem } | undefined {
  const last = terms.at(-1);
  const closing =
    terms.length > 1 && touch(terms.at(-2), last) && terms.at(-2)?.text === '*' && last?.text === '/';
  const at = closing ? 0 : terms.findIndex((_, i) => startsRemark(terms, i));
  const first = terms[at];
  if (!first || !last) return undefined;
  const rest = terms.slice(at + 1);
  // All of a sign that is written several times: `---`, `<!--`.
  let signs = 1;
  if (!closing) while (touch(terms[at + signs - 1], terms[at + signs]) && isSign(terms[at + signs])) signs++;
  const ruler = at === 0 && terms.length > 2 && terms.every((t) => t.text === first.text);
  if (ruler) {
    const span = { start: first.start, end: last.end };
    const fix = replace(
      problemMessage('word-unexpected--drop', { text: name('---') }),
      wholeLines(text, span),
      '',
    );
    return {
      at,
      problem: problem('strange-character--ruler', span, { character: name(first.text) }, { fixes: [fix] }),
    };
  }
  const mark = { start: first.start, end: terms[at + signs - 1]?.end ?? first.end };
  const html = first.text === '<' && last.text === '>' && rest.length > 2;
  const edits = closing
    ? [
        { span: { start: first.start, end: first.start }, text: '// ' },
        { span: { start: terms.at(-3)?.end ?? last.start, end: last.end }, text: '' },
      ]
    : [
        { span: mark, text: '//' },
        ...(html ? [{ span: { start: terms.at(-4)?.end ?? last.start, end: last.end }, text: '' }] : []),
      ];
  const title = problemMessage('strange-character--remark-fix', {});
  return {
    at,
    problem: problem(
      'strange-character--remark',
      { start: first.start, end: last.end },
      {
        character: name(
          closing
            ? '*/'
            : terms
                .slice(at, at + signs)
                .map((t) => t.text)
                .join(''),
        ),
      },
      { fixes: [{ title, edits, safe: false }] },
    ),
  };
}

function startsRemark(terms: readonly Term[], i: number): boolean {
  const [before, term, next, after] = [terms[i - 1], terms[i], terms[i + 1], terms[i + 2]];
  if (term?.text === '#') return next?.kind === 'word' && !touch(term, next) && !touch(before, term);
  if (term?.text === '<') return next?.text === '!' && touch(term, next);
  if (term?.text === '/') return next?.kind === 'word' && after?.kind === 'word' && !touch(term, next);
  const dashes = term?.text === '-' && next?.text === '-' && touch(term, next);
  return (
    dashes && (after?.kind === 'word' || after?.text === '-') && after.start > next.end - (i === 0 ? 1 : 0)
  );
}

const isSign = (t: Term | undefined): boolean => t?.kind === 'other' || t?.kind === 'symbol';

const touch = (a: Term | undefined, b: Term | undefined): boolean =>
  a !== undefined && b !== undefined && a.end === b.start;

/** Signs that start the items of a list in a letter. */
const bullets = /^[•·▪◦●○■□‣⁃–—\uf0a7\uf0b7]$/;
const quotes = /^[“”„«»]$/;

/** What was told of this statement already: once is enough. */
interface Seen {
  quote: boolean;
  hidden: boolean;
}

function termProblems(
  terms: readonly Term[],
  i: number,
  term: Term,
  text: string,
  seen: Seen,
): readonly LanguageProblem[] {
  const [before, after] = [terms[i - 1], terms[i + 1]];
  if (term.kind === 'text') return textProblems(term, after, terms.at(-1));
  const bullet = i === 0 && after && (bullets.test(term.text) || /^[-*]$/.test(term.text));
  if (bullet && term.kind !== 'word' && after.kind === 'word') {
    const gap = touch(term, after) ? '' : text.slice(term.end, after.start);
    const span = { start: term.start, end: term.end + Math.min(1, gap.length) };
    return [told('strange-character--bullet', term, drop(term.text, span))];
  }
  const more = term.text === '+' && before?.kind === 'number' && touch(before, term);
  if (more && (!after || (after.kind === 'word' && !touch(term, after)))) return [notExact(term, before)];
  if (term.kind !== 'other') return [];
  if (term.text === '.' && before && after && touch(before, term) && touch(term, after))
    return before.kind === 'number' && after.text.startsWith('.') ? [dotted(terms, i, text)] : [];
  if (quotes.test(term.text)) {
    if (seen.quote) return [];
    seen.quote = true;
    return quoted(terms, i, term);
  }
  if (/^[~≈<>≥≤]$/.test(term.text) && after?.kind === 'number') return [notExact(term, after)];
  if (/[–—]/.test(term.text) && before?.kind === 'number' && after?.kind === 'number') {
    const near = `${before.text} to ${after.text}`;
    const span = { start: before.start, end: after.end };
    return [
      problem(
        'strange-character--dash',
        span,
        { character: name(term.text), near: name(near) },
        { fixes: [replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near)] },
      ),
    ];
  }
  if (term.text === '.' && (before || after))
    return [problem('strange-character--period', term, {}, { fixes: [drop('.', afterGap(before, term))] })];
  if (term.text === '#' && before?.kind === 'number' && touch(before, term)) {
    const near = `${before.text} lb`;
    const fix = replace(problemMessage('number-malformed--fix', { near: name(near) }), term, ' lb');
    return [problem('strange-character--pound', term, { near: name(near) }, { fixes: [fix] })];
  }
  if (term.text === '&' && before && after) {
    const inLength = findUnit(before.text) !== undefined && after.kind === 'number';
    const near = inLength ? `${tailOf(terms, i)} ${headOf(terms, i)}` : ',';
    const fix = replace(
      problemMessage('word-unexpected--fix', { near: name(near) }),
      { start: before.end, end: term.end },
      inLength ? '' : ',',
    );
    return [
      inLength
        ? problem('strange-character--and', term, { near: name(near) }, { fixes: [fix] })
        : problem('strange-character--comma', term, { character: name(term.text) }, { fixes: [fix] }),
    ];
  }
  if (term.text === '×' && before?.kind === 'number' && after?.kind === 'number') {
    const near = `${before.text} by ${after.text}`;
    const fix = replace(problemMessage('number-malformed--fix', { near: name(near) }), term, 'by');
    return [problem('strange-character--by', term, { near: name(near) }, { fixes: [fix] })];
  }
  if (/\p{Cf}/u.test(term.text)) {
    if (seen.hidden) return [];
    seen.hidden = true;
    return hidden(term, text);
  }
  // One error for several in a row.
  if (before?.kind === 'other' && touch(before, term)) return [];
  return [
    told('strange-character', term, drop(term.text, afterGap(before, term)), { character: name(term.text) }),
  ];
}

/** `~18,000`, `>16,000`, `16,000+`: how much is not known exactly. */
const notExact = (sign: Term, number: Term): LanguageProblem => {
  const example = name('16,000 to 20,000 lb, 18,000 lb ± 10 %');
  const span = { start: Math.min(sign.start, number.start), end: Math.max(sign.end, number.end) };
  return problem('strange-character--about', span, { character: name(sign.text), example });
};

const told = (
  key: 'strange-character' | 'strange-character--bullet',
  { start, end, text }: Term,
  fix: LanguageProblem['fixes'][number],
  holes: { readonly character: ReturnType<typeof name> } = { character: name(text) },
): LanguageProblem => problem(key, { start, end }, holes, { fixes: [fix] });

const drop = (text: string, span: Span) =>
  replace(problemMessage('word-unexpected--drop', { text: name(text) }), span, '');

/** A sign with the gap before it; nothing is kept of it. */
const afterGap = (before: Term | undefined, { start, end }: Term): Span => ({
  start: before?.end ?? start,
  end,
});

/** `3 ft` before a sign, and `2 in` after it. */
const tailOf = (terms: readonly Term[], i: number): string =>
  terms
    .slice(Math.max(0, i - 2), i)
    .map((t) => t.text)
    .join(' ');
const headOf = (terms: readonly Term[], i: number): string =>
  terms
    .slice(i + 1, i + 3)
    .map((t) => t.text)
    .join(' ');

/** `16,000..20,000` */
function dotted(terms: readonly Term[], i: number, text: string): LanguageProblem {
  const start = terms[i - 1]?.start ?? 0;
  const written = /^[\d,]+\.{2,}[\d,]+/.exec(text.slice(start))?.[0] ?? text.slice(start, terms[i]?.end);
  const near = written.replace(/\.{2,}/, ' to ');
  const span = { start, end: start + written.length };
  const fix = replace(problemMessage('number-malformed--fix', { near: name(near) }), span, near);
  return problem(
    'strange-character--dash',
    span,
    { character: name('..'), near: name(near) },
    { fixes: [fix] },
  );
}

/** A text in the quotes of a word processor: both are put right at once. */
function quoted(terms: readonly Term[], i: number, open: Term): readonly LanguageProblem[] {
  const close = terms.find((t, j) => j > i && quotes.test(t.text));
  const title = problemMessage('strange-character--fix', {});
  const edits = [open, ...(close ? [close] : [])].map(({ start, end }) => ({
    span: { start, end },
    text: '"',
  }));
  const span = { start: open.start, end: close?.end ?? open.end };
  return [problem('strange-character--quote', span, {}, { fixes: [{ title, edits, safe: true }] })];
}

/** Signs that nobody can see, all of a word at once. */
function hidden(term: Term, text: string): readonly LanguageProblem[] {
  let [start, end] = [term.start, term.end];
  while (start > 0 && !/[\s{}]/.test(text.charAt(start - 1))) start--;
  while (end < text.length && !/[\s{}]/.test(text.charAt(end))) end++;
  const word = text.slice(start, end);
  const fix = replace(
    problemMessage('strange-character--hidden-fix', {}),
    { start, end },
    word.replace(/\p{Cf}/gu, ''),
    true,
  );
  const character = `U+${(term.text.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
  return [
    problem('strange-character--hidden', { start, end }, { character: name(character) }, { fixes: [fix] }),
  ];
}

function textProblems(
  term: Term,
  after: Term | undefined,
  last: Term | undefined,
): readonly LanguageProblem[] {
  if (term.text.length < 2 || !term.text.endsWith('"')) {
    const smart = /[“”„«»]$/.exec(term.text);
    if (smart) {
      const end = { start: term.end - 1, end: term.end };
      const fix = replace(problemMessage('strange-character--fix', {}), end, '"', true);
      return [problem('strange-character--quote', term, {}, { fixes: [fix] })];
    }
    // What ends a block on its line was taken into the text.
    const at = term.start + term.text.replace(/[\s;}]+$/, '').length;
    const fix = replace(problemMessage('text-not-closed--fix', {}), { start: at, end: at }, '"');
    return [problem('text-not-closed', term, {}, { fixes: [fix] })];
  }
  if (after && touch(term, after) && after.kind === 'word' && last) {
    return [problem('text-quote-inside', { start: term.end - 1, end: last.end }, {})];
  }
  return unseenIn(term);
}

/** The first sign in a text in quotes that nobody can see. */
const unseenIn = (term: Term): readonly LanguageProblem[] =>
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
