import { expect, it } from 'vitest';
import { sourceInWords } from './source.js';

it('names title and locator of what is published', () => {
  expect(sourceInWords({ kind: 'published', title: '49 CFR 393.108', locator: 'chain table' })).toBe(
    '49 CFR 393.108, chain table',
  );
});

it('carries the source behind a policy line', () => {
  expect(
    sourceInWords({
      kind: 'policy',
      policy: 'CountyPolicy',
      limit: 'least overhang',
      of: { kind: 'common practice' },
    }),
  ).toBe('policy CountyPolicy: least overhang (common practice, no source)');
});

it.each([
  [{ kind: 'from memory', title: 'tractor frame heights' }, 'from memory: tractor frame heights'],
  [{ kind: 'from memory' }, 'from memory'],
  [{ kind: 'unknown' }, 'source not known'],
  [{ kind: 'invented' }, 'invented, for teaching only'],
] as const)('says honestly what has no source', (source, words) => {
  expect(sourceInWords(source)).toBe(words);
});
