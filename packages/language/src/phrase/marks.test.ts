import { foot, inch, readQuantity } from '@cribwright/units';
import { expect, it } from 'vitest';
import { unitOfMark, withUnitWords } from './marks.js';

it.each([
  ['19\' 6"', '19 ft 6 in'],
  ['19\'-6"', '19 ft 6 in'],
  ['19\'6"', '19 ft 6 in'],
  ['6\'-3 3/4"', '6 ft 3 3/4 in'],
  ['6\'-3-3/4"', '6 ft 3 3/4 in'],
  ['6¾"', '6¾ in'],
  ["24''", '24 in'],
  ['3’ 2”', '3 ft 2 in'],
  ["24'", '24 ft'],
  ['3 ft 2 in', '3 ft 2 in'],
  ['36,000 lb', '36,000 lb'],
])('writes %j with its units as words', (text, words) => expect(withUnitWords(text)).toBe(words));

it('comes to the length that the tape shows', () => {
  const read = readQuantity(withUnitWords('6\'-3 3/4"'), 'length');
  expect(read.ok && read.value.value).toBeCloseTo(6 * foot + 3.75 * inch, 12);
});

it('knows the unit of each mark', () => {
  expect(["'", '’', '′'].map((m) => unitOfMark(m)?.id)).toEqual(['ft', 'ft', 'ft']);
  expect(['"', '”', '″', "''"].map((m) => unitOfMark(m)?.id)).toEqual(['in', 'in', 'in', 'in']);
  expect(unitOfMark('-')).toBeUndefined();
});
