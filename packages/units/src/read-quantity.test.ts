import { describe, expect, it } from 'vitest';
import type { Dimension } from './dimension.js';
import { readQuantity } from './read-quantity.js';

const si = (text: string, wanted?: Dimension) => {
  const read = readQuantity(text, wanted);
  if (!read.ok) throw new Error(`${text}: ${read.problem.text}`);
  return read.value;
};
const problem = (text: string, wanted?: Dimension) => {
  const read = readQuantity(text, wanted);
  return read.ok ? undefined : read.problem;
};

describe('reads what people write', () => {
  it.each<readonly [string, number, Dimension]>([
    ['24 in', 0.6096, 'length'],
    ['3 ft 4 in', 1.016, 'length'],
    [`3'4"`, 1.016, 'length'],
    [`3' 4 1/2"`, 1.0287, 'length'],
    ['3-1/2 in', 0.0889, 'length'],
    ['3½ in', 0.0889, 'length'],
    ['½ in', 0.0127, 'length'],
    ['1/2 in', 0.0127, 'length'],
    ['-3 ft 6 in', -1.0668, 'length'],
    ['2 m 5 cm', 2.05, 'length'],
    ['36,000 lb', 160_135.978149378, 'force'],
    ['12 LBS', 53.378659383126, 'force'],
    ['12 %', 0.12, 'ratio'],
    ['0.5', 0.5, 'ratio'],
    ['60°', Math.PI / 3, 'angle'],
    ['5 kN/m2', 5000, 'pressure'],
    ['5 lb ft', 6.7790897416570015, 'moment'],
    ['2 h 30 min', 9000, 'duration'],
    ['62.4 pcf', 9802.2577, 'unit weight'],
  ])('%s', (text, value, dimension) => {
    const q = si(text);
    expect(q.dimension).toBe(dimension);
    expect(q.value).toBeCloseTo(value, Math.abs(value) > 1000 ? 2 : 9);
  });

  it('takes a mass as a weight at standard gravity where a weight is wanted', () => {
    expect(si('2 t', 'force')).toEqual({ value: 19_613.3, dimension: 'force' });
  });

  it('tells 13.6 ft from 13 ft 6 in', () => {
    expect(si('13.6 ft').value - si('13 ft 6 in').value).toBeCloseTo(0.1 * 0.3048, 12);
  });
});

describe('says what is wrong, where, and what would be right', () => {
  it.each<readonly [string, Dimension | undefined, string, string, string | undefined]>([
    ['24', 'length', 'unit-missing', '24', '24 in'],
    ['24 inchs', 'length', 'unit-unknown', 'inchs', '24 inch'],
    ['50 fot', 'length', 'unit-unknown', 'fot', '50 ft'],
    ['3,5 in', 'length', 'number-malformed', '3,5', '3.5 in'],
    ['36,00 lb', 'force', 'number-malformed', '36,00', '36.00 lb'],
    ['3 ft 14 in', 'length', 'unit-order', '14 in', undefined],
    ['4 in 3 ft', 'length', 'unit-order', '3 ft', undefined],
    ['3.5 ft 2 in', 'length', 'unit-order', '2 in', undefined],
    ['2 ft', 'force', 'dimension-wrong', '2 ft', undefined],
    ['abc', 'force', 'number-missing', 'abc', undefined],
    ['', 'length', 'number-missing', '', undefined],
    ['1/0 in', 'length', 'number-malformed', '1/0', undefined],
    ['24 in high', 'length', 'text-after', 'high', undefined],
    ['2.5', 'count', 'number-malformed', '2.5', undefined],
    ['9999999999999 in', 'length', 'number-malformed', '9999999999999', undefined],
  ])('%s as %s', (text, wanted, id, where, fix) => {
    const found = problem(text, wanted);
    expect(found?.id).toBe(id);
    expect(text.slice(found?.from, found?.to)).toBe(where);
    expect(found?.fix).toBe(fix);
    expect(found?.text).not.toMatch(/undefined|NaN/);
  });
});
