import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from './parse.js';
import type { SyntaxStatement } from './syntax.js';

/** Statements as they were read, one line each, what is inside braces further in. */
const shown = (list: readonly SyntaxStatement[], indent = ''): readonly string[] =>
  list.flatMap((s) => [
    indent + s.terms.map((t) => `${t.kind}:${t.text}`).join(' ') + (s.body ? ' {' : ''),
    ...(s.body ? shown(s.body.statements, `${indent}  `) : []),
  ]);

const read = (text: string) => shown(parse(text).statements);
const issues = (text: string) => parse(text).issues.map((i) => [i.kind, text.slice(i.start, i.end)]);

describe('terms', () => {
  it.each([
    ['36,000', 'number:36,000'],
    ['38.5', 'number:38.5'],
    ['3½', 'number:3½'],
    ['3 1/2', 'number:3 number:1 symbol:/ number:2'],
    ['24in', 'number:24 word:in'],
    ['4x4', 'size:4x4'],
    ['2027-03-01', 'date:2027-03-01'],
    ['crib-height', 'word:crib-height'],
    ['a - b', 'word:a symbol:- word:b'],
    ['Fir4x4', 'word:Fir4x4'],
    ['"a title"', 'text:"a title"'],
    ['"open', 'text:"open'],
    ['Peña', 'word:Peña'],
    ['± 8 %', 'symbol:± number:8 symbol:%'],
    ['a#b', 'word:a other:# word:b'],
  ])('%j is %s', (text, terms) => expect(read(text)).toEqual([terms]));
});

describe('statements', () => {
  it.each(['\v', '\f', '\u0085', '\u2028', '\u2029'])(
    'go on after a comment that %j ends, as some editors show it',
    (line) => {
      expect(read(`// a note${line}a {${line}b // more${line}}`)).toEqual(['word:a {', '  word:b']);
      expect(read(`a "open${line}b`)).toEqual(['word:a text:"open', 'word:b']);
    },
  );

  it('end at the end of the line, or at a semicolon', () => {
    expect(read('a b\nc; d')).toEqual(['word:a word:b', 'word:c', 'word:d']);
  });

  it('go on after a comma at the end of a line, and past empty lines and comments there', () => {
    expect(read('a b,\n\n  // note\n  c')).toEqual(['word:a word:b symbol:, word:c']);
  });

  it('may have their brace on the next line', () => {
    expect(read('crib A\n{\n  courses 4\n}')).toEqual(['word:crib word:A {', '  word:courses number:4']);
  });

  it('may stand in a block on one line', () => {
    expect(read('strap T { from S1 base  to S2 base }\nchock K')).toEqual([
      'word:strap word:T {',
      '  word:from word:S1 word:base word:to word:S2 word:base',
      'word:chock word:K',
    ]);
  });

  it('know where they stand', () => {
    const text = '  crib A { courses 11 }';
    const [statement] = parse(text).statements;
    expect(text.slice(statement?.start, statement?.end)).toBe('crib A { courses 11 }');
    expect(text.slice(statement?.body?.start, statement?.body?.end)).toBe('{ courses 11 }');
  });
});

describe('braces that do not balance', () => {
  it('close at the first line that starts no further in', () => {
    const text = 'plan "P" {\n  crib A {\n    courses 4\n\n  crib B {\n    courses 2\n  }\n}\n';
    expect(read(text)).toEqual([
      'word:plan text:"P" {',
      '  word:crib word:A {',
      '    word:courses number:4',
      '  word:crib word:B {',
      '    word:courses number:2',
    ]);
    expect(issues(text)).toEqual([['not closed', '{']]);
  });

  it('close at the end of the file, the innermost first', () => {
    expect(issues('a {\n  b {\n    c')).toEqual([
      ['not closed', '{'],
      ['not closed', '{'],
    ]);
  });

  it('are left out where they close nothing', () => {
    expect(read('a }\n}\nb')).toEqual(['word:a', 'word:b']);
    expect(issues('a }\n}\nb')).toEqual([
      ['stray close', '}'],
      ['stray close', '}'],
    ]);
  });

  it('are not read where they stand too deep', () => {
    expect(issues(`${'a {'.repeat(40)}${'}'.repeat(40)}`)).toEqual([['too deep', '{']]);
  });
});

it('keeps every term of any text, in order and where it stands', () => {
  const walk = (list: readonly SyntaxStatement[]): readonly { start: number; end: number; text: string }[] =>
    list.flatMap((s) => [...s.terms, ...(s.body ? walk(s.body.statements) : [])]);
  const piece = fc.constantFrom(
    'a',
    '12',
    '"t"',
    '{',
    '}',
    '\n',
    ';',
    ',',
    '-',
    ' ',
    '4x4',
    '#',
    '// c\n',
    '/* d */',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
      const text = pieces.join(' ');
      const terms = walk(parse(text).statements);
      for (const t of terms) expect(text.slice(t.start, t.end)).toBe(t.text);
      expect(terms.map((t) => t.start)).toEqual(terms.map((t) => t.start).sort((a, b) => a - b));
      const words = text.replace(/\/\/[^\n]*|\/\*[\s\S]*?\*\//g, '').match(/"t"|4x4|[a#,-]|12/g) ?? [];
      expect(terms.map((t) => t.text)).toEqual(words);
    }),
    { numRuns: 200 },
  );
});

it('closes at the next block where nothing is indented', () => {
  const text = 'plan "P" {\ncrib A {\ncourses 4\ncrib B {\ncourses 2\n}\n}\n';
  expect(read(text)).toEqual([
    'word:plan text:"P" {',
    '  word:crib word:A {',
    '    word:courses number:4',
    '  word:crib word:B {',
    '    word:courses number:2',
  ]);
});
