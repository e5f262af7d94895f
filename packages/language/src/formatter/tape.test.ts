import { parse } from '@cribwright/syntax';
import { expect, it } from 'vitest';
import { layOutText } from './layout.js';

function format(text: string): string {
  let result = text;
  const edits = layOutText(text, parse(text).statements, {
    indent: '  ',
    cells: () => [{ at: 1, column: 'value' }],
  });
  for (const { start, end, text: gap } of [...edits].reverse())
    result = result.slice(0, start) + gap + result.slice(end);
  return result;
}

it.each(['19\' 6"', '19\'-6"', '19\'6"', '6\'-3 3/4"', '6\'-3-3/4"', '24" long', "24''", '19 ft 6 in'])(
  'keeps %s as its author writes it',
  (length) => {
    const text = `crib A {\n  at ${length}, driver side 3'\n}\n`;
    expect(format(text)).toBe(text);
  },
);
