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
  const dashed = dashedFrom(terms, at);
  if (dashed) return dashed;
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
