import { expect, it } from 'vitest';
import { plain } from '../terminal/paint.js';
import { quote } from './quote.js';

const text = 'crib A {\n  courses  14\n}\n';
const on = (line: number, from: number, to: number, endLine = line) => ({
  start: { line, character: from },
  end: { line: endLine, character: to },
});

it('quotes the line and underlines the cause', () => {
  expect(quote(text, on(1, 2, 13), plain)).toEqual(['  2 |   courses  14', '    |   ^^^^^^^^^^^']);
});

it('underlines to the end of the first line where the cause runs on', () => {
  expect(quote(text, on(0, 0, 1, 2), plain)).toEqual(['  1 | crib A {', '    | ^^^^^^^^']);
});

it('marks an empty place with one caret', () => {
  expect(quote(text, on(2, 1, 1), plain)).toEqual(['  3 | }', '    |  ^']);
});

it('says nothing about a line that is not there', () => {
  expect(quote(text, on(40, 0, 1), plain)).toEqual([]);
});

it('cuts a very long line around its cause', () => {
  const long = `${'a'.repeat(5000)} courses 14 ${'b'.repeat(5000)}`;
  const [line, mark] = quote(long, on(0, 5001, 5011), plain);
  expect(line).toMatch(/^ {2}1 \| …a+ courses 14 b+…$/);
  expect(line?.length).toBeLessThan(130);
  expect(line?.indexOf('courses')).toBe(mark?.indexOf('^'));
});

it('cuts a cause that is itself too long', () => {
  const [line, mark] = quote('{'.repeat(1_000_000), on(0, 0, 1_000_000), plain);
  expect(line).toBe(`  1 | ${'{'.repeat(120)}…`);
  expect(mark?.length).toBeLessThan(130);
});
