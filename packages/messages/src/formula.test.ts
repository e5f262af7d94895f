import { describe, expect, it } from 'vitest';
import { evaluateFormula, evaluateOverRanges, inputsOf, parseFormula } from './formula.js';

const at = (text: string, over: Readonly<Record<string, number>>) =>
  evaluateFormula(parseFormula(text), new Map(Object.entries(over)));

describe('a formula', () => {
  it.each([
    ['{a} × {b}', { a: 1.5, b: 16 }, 24],
    ['{a} − {b} − {c}', { a: 40, b: 28, c: 2 }, 10],
    ['{a} ÷ {b} × {c}', { a: 12, b: 4, c: 2 }, 6],
    ['({a} + {b}) ÷ 2', { a: 3, b: 5 }, 4],
    ['sqrt({a}² + {b}²)', { a: 3, b: 4 }, 5],
    ['min({a}, {b}) + max(0, −{a})', { a: 3, b: 5 }, 3],
    ['floorTo({a} × {b}, {c})', { a: 500, b: 12.25, c: 1000 }, 6000],
    ['2 × (1 + r) where r = {a} ÷ 4', { a: 2 }, 3],
    ['{a} × {b} (= {c} − {d})', { a: 2, b: 3, c: 5, d: 2 }, 6],
  ])('%s', (text, over, value) => {
    expect(at(text, over)).toBeCloseTo(value, 12);
  });

  it('knows its inputs, each once', () => {
    expect(inputsOf(parseFormula('({a} + r) × {a} where r = {b}'))).toEqual(['a', 'b']);
  });

  it.each(['{a} ×', '({a}', '{a} {b}', 'rating of {a}', ''])('refuses %s', (text) => {
    expect(() => parseFormula(text)).toThrow('is not a formula');
  });

  it('is not a number where an input is missing', () => {
    expect(at('{a} + {b}', { a: 1 })).toBeNaN();
  });

  it('takes the ends of ranges', () => {
    const over = new Map([
      ['a', { low: 39, high: 41 }],
      ['b', { low: 28, high: 30 }],
    ]);
    expect(evaluateOverRanges(parseFormula('{a} − {b}'), over)).toEqual({ low: 9, high: 13 });
  });
});
