import type { Expression } from '@cribwright/language/internal';
import { findUnit } from '@cribwright/units';
import { describe, expect, it } from 'vitest';
import { writeLength } from './write-length.js';

const nowhere = { start: 0, end: 0 };
function number(unit: string): Expression {
  const found = findUnit(unit);
  if (!found) throw new Error(unit);
  return { kind: 'number', value: 1, unit: { unit: found, text: unit, span: nowhere }, span: nowhere };
}
const compound: Expression = { kind: 'compound', pieces: [], span: nowhere };

describe('keeps the units of the text', () => {
  it.each([
    [6.7056, number('ft'), '22 ft'],
    [6.8072, number('ft'), '22 ft 4 in'],
    [6.8072, compound, '22 ft 4 in'],
    [0.1, compound, '4 in'],
    [0, compound, '0 ft'],
    [1.016, number('in'), '40 in'],
    [1.0239, number('in'), '40 in'],
    [6.8072, number('m'), '6.81 m'],
    [6.8, number('m'), '6.8 m'],
    [6.8072, number('mm'), '6,810 mm'],
    [0.3048, number('feet'), '1 feet'],
  ])('%d m', (meters, like, written) => expect(writeLength(meters, like)).toBe(written));
});

it('will not write over what is worked out', () => {
  expect(writeLength(1, { kind: 'group', of: compound, span: nowhere })).toBeUndefined();
  expect(writeLength(1, { kind: 'range', low: compound, high: compound, span: nowhere })).toBeUndefined();
});
