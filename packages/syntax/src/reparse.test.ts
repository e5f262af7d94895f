import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { longest } from './layout.js';
import { parse } from './parse.js';
import { reparse } from './reparse.js';
import { edited, most } from './testing/some-edit.js';

const plans = new URL('../../../examples/plans/', import.meta.url);
const examples = readdirSync(plans).map((f) => readFileSync(new URL(f, plans), 'utf8'));
const number = fc.nat(most - 1);
const someEdit = fc.tuple(number, number, number, number);

it('reads an edited text as if it were read whole', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...examples),
      fc.array(someEdit, { minLength: 1, maxLength: 6 }),
      (text, edits) => {
        let now = { text, parsed: parse(text) };
        for (const edit of edits) {
          const next = edited(now.text, edit);
          const parsed = reparse(now, next);
          expect(parsed).toEqual(parse(next));
          now = { text: next, parsed };
        }
      },
    ),
    { numRuns: 150 },
  );
});

const base = 'plan "P" {\n  crib A {\n    courses 6\n  }\n  crib B { courses 4 }\n}\n';
const after = (from: string, to: string, text = base) => {
  const next = text.replace(from, to);
  expect(next).not.toBe(text);
  expect(reparse({ text, parsed: parse(text) }, next)).toEqual(parse(next));
};

it('does so where an edit opens or closes something', () => {
  after('courses 6', 'courses 6 }');
  after('courses 6', 'courses { 6');
  after('courses 6', '/* courses 6');
  after('courses 6', '/* courses 6 */');
  after('courses 6\n  }', 'courses 6 // }');
  after('courses 6', 'courses "6');
  after('courses 6', 'courses 6,');
  after('{ courses 4 }', '{ courses 4, }');
  after('{ courses 4 }', '{}');
  after('crib A {', 'crib A');
  after('}\n  crib B', '} crib B');
  after('  crib A {\n    courses 6\n  }\n', '');
  after('courses 6', '{ { { { { { { { { { { { { { { { { } } } } } } } } } } } } } } } } }');
  after('courses 6', 'courses 7', '/* a note }{ */ crib X { }\n{ crib Y { courses 6 } }\n');
});

it('keeps what stands before the edit as it was', () => {
  const parsed = parse(base);
  const next = reparse({ text: base, parsed }, base.replace('courses 4', 'courses 12'));
  const inside = ({ statements }: typeof parsed) => statements[0]?.body?.statements[0];
  expect(inside(next)).toBe(inside(parsed));
});

const several =
  '// notes\nuse "a.crib"\n\nplan "P" {\n  crib A { courses 6 }\n}\n\n// more\nplan "Q" {\n  crib B {}\n}\n';

it('does so for an edit between blocks, or of the first line of one', () => {
  for (const [from, to] of [
    ['// notes', '// other notes\n// and more'],
    ['// notes', 'use "b.crib"'],
    ['// notes', '/* notes'],
    ['// notes', 'words,'],
    ['// notes\n', '// notes '],
    ['// notes\n', 'let a = 3 in '],
    ['"a.crib"', '"a.crib",'],
    ['"a.crib"', '"a.crib" {'],
    ['"a.crib"\n\n', '"a.crib" '],
    ['"P"', '"P and more"'],
    ['"P" {', '"P"'],
    ['"P" {', '"P"\n{'],
    ['plan "P" {', 'plan "P" { }\nplan "R" {'],
    ['// more', '// more\n{ crib C {} }'],
    ['// more', '}'],
    ['// more', '*/ more'],
    ['// more', ', more'],
    ['// more\n', 'pattern x {} '],
    ['// more\n', 'pattern x,\n'],
    ['}\n\n// more', '}; let a = 3 in\n// more'],
    ['plan "Q"', '{'],
    ['plan "Q" {\n  crib B {}\n}\n', ''],
    ['crib B {}\n}\n', 'crib B {}\n}\nlet b = 4 in'],
  ] as const)
    after(from, to, several);
});

it('keeps the plans before and after such an edit', () => {
  const parsed = parse(several);
  const next = reparse({ text: several, parsed }, several.replace('// more', '// note'));
  expect(next.statements[1]).toBe(parsed.statements[1]);
  expect(next.statements[2]).toBe(parsed.statements[2]);
});

it('tells that a text has become too long', () => {
  const text = `plan "P" {\n  crib A {\n${'1 '.repeat(longest - 20)}\n  }\n  crib B {}\n}\n`;
  const next = text.replace('crib B {}', `crib B { ${'2 '.repeat(40)} }`);
  expect(parse(text).issues).toEqual([]);
  const again = reparse({ text, parsed: parse(text) }, next);
  expect(again.issues.map((issue) => issue.kind)).toContain('too long');
  expect(again).toEqual(parse(next));
});
