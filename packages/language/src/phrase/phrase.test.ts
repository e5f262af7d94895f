import { parse } from '@cribwright/syntax';
import { describe, expect, it } from 'vitest';
import type { Pattern } from '../bound/shape.js';
import { evaluate } from './evaluate.js';
import { matchLine } from './matcher.js';
import { vectorOfExpression } from './measure.js';
import { parseExpression } from './parse-expression.js';
import {
  anyOrder,
  choice,
  count,
  either,
  flag,
  group,
  list,
  optional,
  quantity,
  reference,
  sequence,
  symbol,
  text,
  word,
} from './pattern.js';
import type { NameScope } from './scope.js';

const crib = {
  uri: 'u',
  kind: 'crib',
  name: 'A',
  nameSpan: { start: 0, end: 1 },
  block: undefined,
  span: { start: 0, end: 1 },
  scope: undefined,
} as const;

/** A place where one crib, A, may be named and nothing else. */
const scope: NameScope = {
  withoutPart: () => undefined,
  usePlace: { start: 0, end: 0 },
  uri: 'u',
  find: (name, kinds) => (name === 'A' && kinds.includes('crib') ? crib : undefined),
  findAny: (name) => (name === 'A' ? crib : undefined),
  names: (kinds) => (kinds.includes('crib') ? [crib] : []),
  part: () => undefined,
  parts: () => [],
  typeUnknown: () => false,
  axle: () => undefined,
  axles: () => [],
  vehicle: undefined,
  openParts: false,
  vectorOf: () => undefined,
  elsewhere: () => undefined,
  rules: new Set(['crib-height']),
};

const termsOf = (line: string) => parse(line).statements[0]?.terms ?? [];
const match = (pattern: Pattern, line: string) =>
  matchLine({ terms: termsOf(line), from: 0, pattern, scope, text: line });
const values = (pattern: Pattern, line: string) => match(pattern, line).match?.values;

describe('a calculation', () => {
  const worth = (line: string, range = true) => {
    const read = parseExpression(0, {
      text: line,
      terms: termsOf(line),
      scope,
      rule: { dimensions: ['length'], range },
      reserved: new Set(),
      free: true,
    });
    const amount =
      read && evaluate(read.expression, { amountOf: () => undefined, figureOf: () => undefined });
    return amount && [amount.low, amount.high];
  };
  const inch = 0.0254;
  it.each([
    ['24 in', 24, 24],
    ['3 ft 4 in', 40, 40],
    ['3 1/2 in', 3.5, 3.5],
    ['3½ in', 3.5, 3.5],
    ['1/2 in', 0.5, 0.5],
    ['4 to 6 in', 4, 6],
    ['4 in to 1 ft', 4, 12],
    ['10 in ± 10 %', 9, 11],
    ['10 in +- 2 in', 8, 12],
    ['2 * 3 in + 1 in', 7, 7],
    ['2 * (3 in + 1 in)', 8, 8],
    ['12 in / 4 - 1 in', 2, 2],
    ['-3 in', -3, -3],
    ['10 in - (1 to 2 in)', 8, 9],
    ['0.5 ft - 1 in', 5, 5],
  ])('%s is %d to %d in', (line, low, high) => {
    const [a = Number.NaN, b = Number.NaN] = worth(line) ?? [];
    expect(a / inch).toBeCloseTo(low, 9);
    expect(b / inch).toBeCloseTo(high, 9);
  });

  it('comes to nothing where it divides by zero', () => expect(worth('4 in / (2 - 2)')).toBeUndefined());

  it('keeps the worst ends of a product and a quotient', () => {
    const area = worth('(-1 to 2 in) * (3 to 4 in)');
    expect(area?.map((v) => v / inch ** 2)).toEqual([expect.closeTo(-4, 9), expect.closeTo(8, 9)]);
  });

  it('tells what it measures, and where its pieces do not fit', () => {
    const problems: Parameters<typeof vectorOfExpression>[3] = [];
    const of = (line: string) => {
      const read = parseExpression(0, {
        text: line,
        terms: termsOf(line),
        scope,
        rule: { dimensions: [], range: true },
        reserved: new Set(),
        free: true,
      });
      return (
        read &&
        vectorOfExpression(read.expression, scope, (e) => line.slice(e.span.start, e.span.end), problems)
      );
    };
    expect(of('2 in * 3 in')).toMatchObject({ length: 2, mass: 0 });
    expect(of('500 psi * 2 in2')).toMatchObject({ length: 1, mass: 1, time: -2 });
    expect(of('100 kg + 20 lb')).toMatchObject({ length: 1, mass: 1, time: -2 });
    expect(problems).toEqual([]);
    expect(of('2 in + 3 deg')).toBeUndefined();
    expect(problems.map((p) => p.code)).toEqual(['dimension-clash']);
  });
});

describe('a phrase', () => {
  it('yields its slots', () => {
    const layout = sequence(count('a'), word('by'), count('b'));
    expect(values(layout, '2 by 3')).toMatchObject({ a: { dimension: 'count' }, b: { dimension: 'count' } });
  });

  it('tries each way, and the pieces of a list, with what may be left out', () => {
    const p = sequence(
      list(
        'items',
        sequence(optional(choice('side', 'driver side', 'passenger side')), reference('on', 'crib')),
      ),
      optional(flag('both', 'both directions')),
    );
    expect(values(p, 'A, driver side A both directions')).toMatchObject({
      both: true,
      items: [{ on: { text: 'A' } }, { side: { text: 'driver side' }, on: { text: 'A' } }],
    });
  });

  it('takes options in any order, each once, with or without commas', () => {
    const p = anyOrder(
      sequence(word('crew'), count('crew')),
      sequence(word('takes'), quantity('takes', 'duration')),
    );
    for (const line of ['crew 2 takes 5 min', 'takes 5 min, crew 2', 'crew 2'])
      expect(values(p, line)).toHaveProperty('crew');
    expect(match(p, 'crew 2 crew 3').match).toBeUndefined();
  });

  it('keeps a group under one name', () => {
    const end = sequence(reference('crib', 'crib'), choice('end', 'base', 'head'));
    expect(
      values(sequence(group('from', end), word('to'), group('to', end)), 'A base to A head'),
    ).toMatchObject({
      from: { end: { text: 'base' } },
      to: { end: { text: 'head' } },
    });
  });

  it('takes the way that has no slip over an earlier one that has', () => {
    const p = either(
      sequence(quantity('weight', 'force'), word('heavy')),
      sequence(quantity('size', 'length'), word('heavy')),
    );
    expect(values(p, '4 in heavy')).toHaveProperty('size');
  });

  it('yields what it can where there is a slip, with a problem at the slip', () => {
    const result = match(sequence(word('on'), reference('on', 'crib'), text('why', 'reason')), 'on B "x"');
    expect(result.match?.values).toMatchObject({ on: { text: 'B', target: undefined }, why: { text: 'x' } });
    expect(result.match?.problems.map((p) => p.code)).toEqual(['unknown-name']);
  });

  it('says how far it came and what would have gone on from there', () => {
    const { match: none, stop } = match(sequence(count('a'), word('by'), count('b')), '2 x 3');
    expect(none).toBeUndefined();
    expect(stop.at).toBe(1);
    expect(stop.expected).toContainEqual({ kind: 'word', word: 'by' });
  });

  it('never takes its own words for a unit or a name', () => {
    const p = sequence(quantity('a', 'count'), word('in'), quantity('b', 'count'));
    expect(values(p, '1 in 8')).toMatchObject({ a: {}, b: {} });
  });

  it('gives up on a phrase that could be tried without end', () => {
    const any = either(symbol(','), optional(symbol(',')), optional(symbol(',')));
    const many = sequence(...Array.from({ length: 40 }, () => any));
    expect(match(many, `${','.repeat(20)} a`).match).toBeUndefined();
  });
});
