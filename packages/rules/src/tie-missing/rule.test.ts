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
    // The step that tightens the other strap tightens this one too.
    { kind: 'append', at: { element: 'step/8' }, text: 'T2' },
  ]);
});

it('offers a strut across where there is none, and the part above', () => {
  const [first] = check(rule, hastyTrailer);
  expect(english(first?.message)).toContain('to an anchor');
  const texts = first?.fixes.map((f) => f.edits.flatMap((e) => (e.kind === 'insert' ? [e.text] : [])));
  expect(texts?.[0]?.[0]).toMatch(
    /^strut S4 : Strut4to8ft \{\n {2}head {2}trailer rail near 14 ft, passenger side/,
  );
  expect(texts?.[0]?.[1]).toMatch(/from S1 base to S4 base/);
  expect(texts?.[1]).toEqual([
    expect.stringMatching(/^strap T1 : \w+ \{ from S1 base to trailer rail 14 ft, driver side 4 ft 1 in \}$/),
  ]);
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
