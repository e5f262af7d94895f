import type { Span, Term } from '@cribwright/syntax/internal';
import { findUnit, type Unit } from '@cribwright/units';

/** Marks for feet and inches: those of a keyboard, and those that a word processor makes of them. */
const marks: Readonly<Record<string, 'ft' | 'in'>> = {
  "'": 'ft',
  '’': 'ft',
  '′': 'ft',
  '"': 'in',
  '”': 'in',
  '″': 'in',
};

/** A mark right after a number, the unit that it stands for, and how many terms it takes: two foot marks are an inch mark. */
export interface UnitMark {
  readonly unit: 'ft' | 'in';
  readonly length: 1 | 2;
}

export function markAt(terms: readonly Term[], at: number, number: Span): UnitMark | undefined {
  const [first, second] = [terms[at], terms[at + 1]];
  const unit = isMark(first) && first.start === number.end ? marks[first.text] : undefined;
  if (unit === undefined || !first) return undefined;
  const twice = unit === 'ft' && second?.text === first.text && second.start === first.end;
  return twice ? { unit: 'in', length: 2 } : { unit, length: 1 };
}

/** Whether a term is a mark for feet or inches. */
export const isMark = (term: Term | undefined): term is Term =>
  term?.kind === 'symbol' && Object.hasOwn(marks, term.text);

/** A length as a tape shows it, with its units as words: `19'-6"` is `19 ft 6 in`. Other quantities stay as they are. */
export const withUnitWords = (text: string): string =>
  text
    .replace(/(?<=\d|[½¼¾⅓⅔⅛⅜⅝⅞])(?:["”″]|(['’′])\1)/g, ' in')
    .replace(/(?<=\d|[½¼¾⅓⅔⅛⅜⅝⅞])['’′]-?\s*/g, ' ft ')
    .replace(/(\d)-(?=\d+\/\d+ in)/g, '$1 ')
    .trim();

/** The unit that a mark stands for. */
export const unitOfMark = (mark: string): Unit | undefined =>
  findUnit(/^(['’′])\1$/.test(mark) ? 'in' : (marks[mark] ?? ''));
