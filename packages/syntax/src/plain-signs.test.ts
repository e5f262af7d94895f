import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from './parse.js';
import { plainSigns } from './plain-signs.js';
import { reparse } from './reparse.js';

const terms = (text: string) =>
  parse(text).statements.flatMap((s) => s.terms.map((t) => `${t.kind}:${t.text}`));

describe('a quote right after a number', () => {
  it.each([
    ['24"', ['number:24', 'symbol:"']],
    ['24" long', ['number:24', 'symbol:"', 'word:long']],
    ['19\' 6"', ['number:19', "symbol:'", 'number:6', 'symbol:"']],
    [
      '6\'-3 3/4"',
      ['number:6', "symbol:'", 'symbol:-', 'number:3', 'number:3', 'symbol:/', 'number:4', 'symbol:"'],
    ],
    ['6¾" "a text"', ['number:6¾', 'symbol:"', 'text:"a text"']],
    ['3’ 2”', ['number:3', 'symbol:’', 'number:2', 'symbol:”']],
  ])('is an inch mark in %j', (text, read) => expect(terms(text)).toEqual(read));

  it.each([
    ['doors "1 to 12"', ['word:doors', 'text:"1 to 12"']],
    ['cache R12"Rescue 12"', ['word:cache', 'word:R12', 'text:"Rescue 12"']],
    ['fuel "24" high', ['word:fuel', 'text:"24"', 'word:high']],
    ['a // 24" long\nb', ['word:a', 'word:b']],
    ['a /* 24" */ b', ['word:a', 'word:b']],
  ])('ends or starts a text in %j', (text, read) => expect(terms(text)).toEqual(read));
});

it('is sign for sign as long', () => {
  const sign = fc.constantFrom('1', '½', '"', "'", ' ', 'a', '\n', '//', '/*', '*/', '：', '１');
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 40 }), (signs) => {
      const text = signs.join('');
      expect(plainSigns(text)).toHaveLength(text.length);
    }),
  );
});

it('reads full-width signs as the plain ones', () => {
  expect(terms('crib Ａ： １１')).toEqual(['word:crib', 'word:A', 'symbol::', 'number:11']);
  expect(terms('fuel "１１"')).toEqual(['word:fuel', 'text:"１１"']);
});

it('reads an edited text with marks in it as if it were read whole', () => {
  const sign = fc.constantFrom('1', '6', '"', "'", ' ', 'a', '\n', '//', '{', '}', ';', '¾', '-', '/*', '*/');
  const inside = fc.array(sign, { maxLength: 12 }).map((s) => s.join(''));
  fc.assert(
    fc.property(inside, inside, (before, after) => {
      const plan = (text: string) =>
        `plan "P 1" {\n  crib A {\n    at 19' 6", ${text}\n  }\n  crib B { courses 4 }\n}\n`;
      const old = plan(before);
      expect(reparse({ text: old, parsed: parse(old) }, plan(after))).toEqual(parse(plan(after)));
    }),
    { numRuns: 400 },
  );
});
