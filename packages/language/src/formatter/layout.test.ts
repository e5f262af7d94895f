import { parse } from '@cribwright/syntax';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cells } from './columns.js';
import { layOutText } from './layout.js';

/** The first word is the key; `crew` and `takes` begin columns. */
const cells: Cells = ({ terms }) => [
  { at: 1, column: 'value' },
  ...terms.flatMap((t, at) => (at > 1 && /^(crew|takes)$/.test(t.text) ? [{ at, column: t.text }] : [])),
];

function format(text: string): string {
  let result = text;
  const edits = layOutText(text, parse(text).statements, { indent: '  ', cells });
  for (const { start, end, text: gap } of [...edits].reverse())
    result = result.slice(0, start) + gap + result.slice(end);
  return result;
}

it('indents by braces and lines up keys', () => {
  expect(format('plan "x"  {\ncrib A{\n timber Fir4x4 24 in long\n      layout   2 by 2\n}\n   }')).toBe(
    'plan "x" {\n  crib A {\n    timber  Fir4x4 24 in long\n    layout  2 by 2\n  }\n}\n',
  );
});

it('lines up clauses that not every line has', () => {
  expect(
    format('steps {\n1 chock trailer both directions crew 1 takes 1 min\n2 capture car takes 4 min\n}\n'),
  ).toBe(
    'steps {\n  1  chock trailer both directions  crew 1  takes 1 min\n  2  capture car                            takes 4 min\n}\n',
  );
});

it('sets a clause out of order apart, without pushing the others', () => {
  expect(format('steps {\n1 a crew 1 takes 1 min\n2 b takes 2 min crew 1\n}\n')).toBe(
    'steps {\n  1  a  crew 1  takes 1 min\n  2  b          takes 2 min  crew 1\n}\n',
  );
});

it('leaves one space where neighboring lines begin alike', () => {
  expect(format('plan "x" {\n  expect   safe\n  expect    crib-height on A\n}\n')).toBe(
    'plan "x" {\n  expect safe\n  expect crib-height on A\n}\n',
  );
});

it('lines up trailing comments, and leaves comment lines at the depth of their neighbors', () => {
  expect(format('g {\n// first\na 1 // one\nlonger 22   // two\n}\n')).toBe(
    'g {\n  // first\n  a       1   // one\n  longer  22  // two\n}\n',
  );
});

it('keeps a block that stands on one line there', () => {
  expect(format('strap T1 : Ratchet  {from S1 base  to S2 base}\n')).toBe(
    'strap T1 : Ratchet { from S1 base  to S2 base }\n',
  );
});

it('keeps one blank line of several, none inside braces, and one line break at the end', () => {
  expect(format('\n\na {\n\n\nb 1\n\n\n\nc 2\n\n}\n\n\n')).toBe('a {\n  b 1\n\n  c 2\n}\n');
});

it('goes on with a long statement further in', () => {
  expect(format('a {\nhead x,\ny,\nz\nfootnote 2\n}\n')).toBe(
    'a {\n  head      x,\n      y,\n      z\n  footnote  2\n}\n',
  );
});

it('keeps the line ends and the tabs that the file uses', () => {
  expect(format('a {\r\nb 1\r\n}')).toBe('a {\r\n  b 1\r\n}\r\n');
});

it('leaves what is inside quotes and comments alone', () => {
  const text = 'plan "a   b  //  c" {\n  /* x\n y   z */\n  // q   q\n}\n';
  expect(format(text)).toBe(text);
});

it('has nothing to change in an empty file', () => {
  expect(format('')).toBe('');
});

describe('any text at all', () => {
  const word = fc.constantFrom(
    'crib',
    'A',
    'timber',
    '36,000',
    '3',
    '½',
    'lb',
    ',',
    ':',
    '(',
    ')',
    '"t  x"',
    '{',
    '}',
    ';',
    '±',
  );
  const space = fc.constantFrom('', ' ', '  ', '\t', '\n', '\n\n\n', '\r\n', ' // c\n', ' /* b */ ');
  const text = fc.array(fc.tuple(word, space), { maxLength: 40 }).map((p) => p.flat().join(''));
  const meaning = (t: string): unknown =>
    JSON.stringify(parse(t).statements, (key, value) =>
      key === 'start' || key === 'end' ? undefined : value,
    );

  it('is the same after formatting twice as after once', () => {
    fc.assert(
      fc.property(text, (t) => {
        fc.pre(parse(t).issues.length === 0);
        expect(format(format(t))).toBe(format(t));
      }),
      { numRuns: 1000 },
    );
  });
  it('says the same after formatting', () => {
    fc.assert(
      fc.property(text, (t) => {
        fc.pre(parse(t).issues.length === 0);
        expect(meaning(format(t))).toBe(meaning(t));
      }),
      { numRuns: 1000 },
    );
  });
  it('loses no character', () => {
    fc.assert(
      fc.property(text, (t) => {
        expect(format(t).replace(/\s/g, '')).toBe(t.replace(/\s/g, ''));
      }),
    );
  });
});
