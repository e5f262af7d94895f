import { expect, it } from 'vitest';
import { textWidth } from './font-metrics.js';
import { clip, wrap } from './wrap.js';

const words = 'If what you see differs from the plan, believe what you see.';

it('breaks text into lines that fit, and loses no word', () => {
  const lines = wrap(words, 40, 3);
  expect(lines.length).toBeGreaterThan(1);
  for (const line of lines) expect(textWidth(line, 3)).toBeLessThanOrEqual(40);
  expect(lines.join(' ')).toBe(words);
});

it('breaks a word that is too long for a line', () => {
  const long = 'x'.repeat(200);
  const lines = wrap(long, 20, 3);
  for (const line of lines) expect(textWidth(line, 3)).toBeLessThanOrEqual(20);
  expect(lines.join('')).toBe(long);
});

it('shortens with dots, and only where it must', () => {
  expect(clip('rail', 40, 3)).toBe('rail');
  const short = clip(words, 30, 3);
  expect(short).toMatch(/\.\.\.$/);
  expect(textWidth(short, 3)).toBeLessThanOrEqual(30);
});
