import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomSeed } from './random-seed.js';

const root = new URL('..', import.meta.url).pathname;

describe('the seed of random values', () => {
  it('comes from the environment, and is the same at every run where the environment names none', () => {
    expect(randomSeed({ CRIBWRIGHT_SEED: '303' })).toBe(303);
    expect(randomSeed({ CRIBWRIGHT_SEED: '-5' })).toBe(-5);
    expect(randomSeed({})).toBe(randomSeed({}));
  });

  it.each(['', 'abc', '1.5', '1e3', '99999999999', '4294967296'])('refuses "%s"', (text) => {
    expect(() => randomSeed({ CRIBWRIGHT_SEED: text })).toThrow('must be a whole number');
  });

  it('is that of fast-check', () => {
    expect(fc.readConfigureGlobal()?.seed).toBe(randomSeed(process.env));
  });

  it('is replaced by no test', () => {
    const files = [join(root, 'tests'), join(root, 'packages')].flatMap((folder) =>
      readdirSync(folder, { withFileTypes: true, recursive: true })
        .filter((f) => f.isFile() && /\.tsx?$/.test(f.name) && !/node_modules|dist/.test(f.parentPath))
        .map((f) => join(f.parentPath, f.name)),
    );
    const texts = files.map((file) => [file.slice(root.length), readFileSync(file, 'utf8')] as const);
    expect(texts.filter(([, text]) => text.includes('fc.assert(')).length).toBeGreaterThan(15);
    // A property that names a seed of its own ignores the environment.
    const fixed = /\bseed:\s*(?:[-\d(]|Number|process)|\{\s*seed\s*[,}]/;
    const own = texts.filter(
      ([file, text]) =>
        file !== 'tests/random-seed.test.ts' && text.includes('fast-check') && fixed.test(text),
    );
    expect(own.map(([file]) => file)).toEqual([]);
    for (const text of [
      '{ seed: 77, numRuns }',
      '{ seed, numRuns }',
      '{ seed: Number(x) }',
      '{ numRuns, seed: -1 }',
    ])
      expect(text).toMatch(fixed);
  });
});
