import { expect, it } from 'vitest';
import { height, limit } from '../testing/sample-report.js';
import { formulaText, sourceText } from './figure-text.js';
import { plainSpeech } from './words.js';

const { words } = plainSpeech;

it('gives the sum in names, then in numbers', () => {
  expect(formulaText(height, words)).toBe('courses × dressed depth = 14 × 3.5 in');
  const { formula: _, ...bare } = height;
  expect(formulaText({ ...bare, source: { kind: 'stated' } }, words)).toBe('as stated');
  const policy = { kind: 'policy', policy: 'CountyPolicy', limit: 'push margin' } as const;
  expect(formulaText({ ...bare, source: policy }, words)).toBe('set by the policy');
  expect(formulaText({ ...bare, source: { kind: 'from memory' } }, words)).toBe('from its source');
});

it('names where the numbers of a worked-out figure come from, each once', () => {
  const inner = { ...height, inputs: [limit, limit] };
  expect(sourceText({ ...height, inputs: [inner, { ...limit, source: { kind: 'stated' } }] }, words)).toBe(
    'calculated from: policy CountyPolicy, height ratio some contacts: common practice, no source; stated in the plan',
  );
  expect(sourceText(height, words)).toBe('calculated');
  expect(sourceText(limit, words)).toContain('policy CountyPolicy');
});
