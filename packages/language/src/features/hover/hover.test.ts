import { expect, it } from 'vitest';
import { atCursor } from '../testing/desk-of.js';
import { fleet, trailerPlan } from '../testing/plans.js';
import { hoverAt } from './hover.js';
import { fenced, plain } from './markdown.js';

async function hovered(from: string, to: string): Promise<string> {
  const { desk, file, offset } = await atCursor(trailerPlan.replace(from, to), { 'fleet.crib': fleet });
  const found = await hoverAt(desk, file, offset);
  const contents = found?.contents;
  return contents && typeof contents === 'object' && 'value' in contents
    ? contents.value.replaceAll('\\', '')
    : '';
}

it('writes out the sum of a height and of what it may be, with sources', async () => {
  const text = await hovered('courses   14', 'cour<|>ses   14');
  expect(text).toContain('49 in');
  expect(text).toContain('16 in');
  expect(text).toContain('Source:');
});

it('gives a support its figures, wherever its name stands', async () => {
  const text = await hovered('build  A', 'build  <|>A');
  expect(text).toContain('crib A');
  expect(text).toContain('49 in');
});

it('says what a name stands for, in its author\u2019s own words, and where', async () => {
  const text = await hovered(': CountyTrailer', ': County<|>Trailer');
  expect(text).toContain('vehicle type CountyTrailer');
  expect(text).toContain("The county's own trailer.");
  expect(text).toContain('fleet.crib');
});

it('explains a line of a block', async () => {
  expect(await hovered('layout', 'lay<|>out')).toContain('layout 2 by 2');
});

it('gives a quantity in the other units', async () => {
  expect(await hovered('24 in long', '2<|>4 in long')).toMatch(/24 in is 610 mm/);
});

it('takes words of a plan as words, never as markup', () => {
  expect(plain('[x](command:evil) <img> `code` **b**')).toBe(
    '\\[x\\](command:evil) \\<img\\> \\`code\\` \\*\\*b\\*\\*',
  );
  expect(fenced('a ``` b')).toBe('````cribwright\na ``` b\n````');
});

it('leaves words that are no markup as they are, for editors that show the text raw', () => {
  expect(plain('14 × 3.5 in - 2 (49 in)')).toBe('14 × 3.5 in - 2 (49 in)');
  expect(plain('1. first')).toBe('1\\. first');
  expect(plain('# no title')).toBe('\\# no title');
});

it('traces what is worked out to its sources', async () => {
  const text = await hovered('courses   14', 'cour<|>ses   14');
  expect(text).toContain('policy Shipped');
});

it('says what a rule protects against, where a plan names it', async () => {
  const text = await hovered('\n  steps', '\n  expect crib-<|>height on A\n\n  steps');
  expect(text).toContain('cribwright:/rules/crib-height.md');
});
