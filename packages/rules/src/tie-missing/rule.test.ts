import { english } from '@cribwright/messages/testing';
import { gripping, hastyTrailer, policyWith, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

it('passes bases that are tied', () => expect(check(rule, trailerOnCar)).toEqual([]));

it('offers the strap to the strut across', () => {
  const found = check(rule, { ...trailerOnCar, ties: trailerOnCar.ties.slice(0, 1) });
  expect(found.map((f) => f.subject.element)).toEqual(['strut/S3', 'strut/S4']);
  expect(found[0]?.fixes[0]?.edits).toEqual([
    {
      kind: 'insert',
      into: { element: 'plan' },
      text: 'strap T2 : RatchetStrap4in { from S3 base to S4 base }',
    },
  ]);
});

it('offers none where there is no strut across', () => {
  const [first] = check(rule, hastyTrailer);
  expect(english(first?.message)).toContain('to an anchor');
  expect(first?.fixes).toEqual([]);
});

// OpenStax University Physics 1, section 6.2: a base stays by friction where 1 ÷ tan θ ≤ μ: with 0.95, 40 in up and
// 38 in out just do.
it('is a warning where friction holds the foot', () => {
  const found = check(rule, {
    ...trailerOnCar,
    ground: gripping,
    ties: [],
    policy: policyWith('friction strut base', 0.951),
  });
  expect(found.map((f) => f.severity)).toEqual(['warning', 'warning', 'warning', 'warning']);
});
