import type { Span, Term } from '@cribwright/syntax/internal';
import { parseNumber } from '@cribwright/units';
import type { WrittenNumberFault } from './number-problem.js';

/** A number at a place in a line, as people write one: `36,000`, `3 1/2`, `1/2`, `3½`. */
export interface ReadNumber {
  readonly value: number | undefined;
  /** What is wrong, where it is malformed. */
  readonly fault: WrittenNumberFault | undefined;
  readonly fix: string | undefined;
  readonly span: Span;
  readonly text: string;
  readonly next: number;
}

export function readNumber(terms: readonly Term[], at: number): ReadNumber | undefined {
  const first = terms[at];
  if (first?.kind !== 'number') return undefined;
  const slip = dashedFrom(terms, at) ?? spacedFrom(terms, at) ?? gappedFraction(terms, at);
  if (slip) return slip;
  const length =
    fractionFrom(terms, at) ?? mixedFrom(terms, at) ?? commaSlip(terms, at) ?? digitSlip(terms, at) ?? 1;
  const last = terms[at + length - 1] ?? first;
  const text = terms.slice(at, at + length).reduce((sum, t, i) => {
    const before = terms[at + i - 1];
    return sum + (i > 0 && before && t.start > before.end ? ' ' : '') + t.text;
  }, '');
  const read = parseNumber(text);
  return {
    value: read.ok ? read.value : undefined,
    fault: read.ok ? undefined : (read.problem.number ?? 'not a number'),
    fix: read.ok ? undefined : read.problem.fix,
    span: { start: first.start, end: last.end },
    text,
    next: at + length,
  };
}

/** `21-1/2` or `21-½`, as it is often written: here a dash is a minus, and 20 1/2 is not what is meant. */
function dashedFrom(terms: readonly Term[], at: number): ReadNumber | undefined {
  const [whole, dash, fraction] = terms.slice(at, at + 3);
  if (!whole || !isWhole(whole) || dash?.text !== '-' || !fraction || !touches(terms, at, at + 2))
    return undefined;
  const length = fractionFrom(terms, at + 2) ?? (/^[½¼¾⅓⅔⅛⅜⅝⅞]$/.test(fraction.text) ? 1 : undefined);
  const last = length === undefined ? undefined : terms[at + 1 + length];
  if (length === undefined || !last) return undefined;
  const part = terms
    .slice(at + 2, at + 2 + length)
    .map((t) => t.text)
    .join('');
  const fix = `${whole.text} ${part}`;
  const text = `${whole.text}-${part}`;
  const read = parseNumber(length === 1 ? `${whole.text}${part}` : fix);
  return {
    value: read.ok ? read.value : undefined,
    fault: 'dash',
    fix: length === 1 ? `${whole.text}${part}` : fix,
    span: { start: whole.start, end: last.end },
    text,
    next: at + 2 + length,
  };
}

/** `16 000`: a space between thousands. */
function spacedFrom(terms: readonly Term[], at: number): ReadNumber | undefined {
  const first = terms[at];
  if (!first || !/^\d{1,3}$/.test(first.text)) return undefined;
  let last = at;
  while (isGroup(terms[last], terms[last + 1])) last++;
  const end = terms[last];
  if (last === at || !end) return undefined;
  const run = terms.slice(at, last + 1).map((t) => t.text);
  return {
    value: undefined,
    fault: 'space',
    fix: run.join(','),
    span: { start: first.start, end: end.end },
    text: run.join(' '),
    next: last + 1,
  };
}

const isGroup = (before: Term | undefined, t: Term | undefined): boolean =>
  before !== undefined && t?.kind === 'number' && /^\d{3}$/.test(t.text) && t.start === before.end + 1;

/** `6 3 /4`, `6 3/ 4`: a fraction with gaps in it after a whole number. */
function gappedFraction(terms: readonly Term[], at: number): ReadNumber | undefined {
  const [whole, top, bar, bottom] = terms.slice(at, at + 4);
  if (
    !whole ||
    !bottom ||
    bar?.text !== '/' ||
    !isWhole(top) ||
    !isWhole(bottom) ||
    !/^[\d.]+$/.test(whole.text)
  )
    return undefined;
  const decimal = !isWhole(whole);
  if ((touches(terms, at + 1, at + 3) && !decimal) || touches(terms, at, at + 1)) return undefined;
  const text = `${whole.text} ${top?.text}/${bottom.text}`;
  return {
    value: undefined,
    fault: decimal ? 'decimal and fraction' : 'gap',
    fix: decimal ? undefined : text,
    span: { start: whole.start, end: bottom.end },
    text,
    next: at + 4,
  };
}

/** `1/2`, without spaces. With spaces it is a division. */
const fractionFrom = (terms: readonly Term[], at: number): number | undefined =>
  touches(terms, at, at + 2) && terms[at + 1]?.text === '/' && isWhole(terms[at]) && isWhole(terms[at + 2])
    ? 3
    : undefined;

/** `3 1/2` */
const mixedFrom = (terms: readonly Term[], at: number): number | undefined =>
  isWhole(terms[at]) && fractionFrom(terms, at + 1) ? 4 : undefined;

/** `3,5` without spaces: a slip that deserves its own message. */
const commaSlip = (terms: readonly Term[], at: number): number | undefined =>
  touches(terms, at, at + 2) && terms[at + 1]?.text === ',' && terms[at + 2]?.kind === 'number'
    ? 3
    : undefined;

/** `36,0000`: read as two numbers that touch. */
const digitSlip = (terms: readonly Term[], at: number): number | undefined =>
  touches(terms, at, at + 1) && terms[at + 1]?.kind === 'number' ? 2 : undefined;

const isWhole = (t: Term | undefined) => t?.kind === 'number' && /^\d+$/.test(t.text);

const touches = (terms: readonly Term[], from: number, to: number): boolean => {
  for (let i = from; i < to; i++) {
    const [a, b] = [terms[i], terms[i + 1]];
    if (!a || !b || a.end !== b.start) return false;
  }
  return true;
};
