import type { Term } from '@cribwright/syntax/internal';

/** Marks for feet and inches that are no signs of the language: a word processor makes them. */
const marks: Readonly<Record<string, 'ft' | 'in'>> = { '’': 'ft', '′': 'ft', '”': 'in', '″': 'in' };

/** The unit that a mark right after a number stands for. */
export const unitOfMark = (before: Term | undefined, mark: Term | undefined): 'ft' | 'in' | undefined =>
  before?.kind === 'number' && mark?.kind === 'other' && before.end === mark.start
    ? marks[mark.text]
    : undefined;
