import { expect, it } from 'vitest';
import { height, limit } from '../testing/sample-report.js';
import { formulaText, sourceText } from './figure-text.js';

it('gives the sum in names, then in numbers', () => {
  expect(formulaText(height)).toBe('courses × dressed depth = 14 × 3.5 in');
  const { formula: _, ...stated } = height;
  expect(formulaText(stated)).toBe('as stated');
});

it('names where the numbers of a worked-out figure come from, each once', () => {
  const inner = { ...height, inputs: [limit, limit] };
  expect(sourceText({ ...height, inputs: [inner, { ...limit, source: { kind: 'stated' } }] })).toBe(
    'worked out from: policy CountyPolicy, height ratio some contacts: common practice, no source; stated in the plan',
  );
  expect(sourceText(height)).toBe('worked out');
  expect(sourceText(limit)).toContain('policy CountyPolicy');
});
