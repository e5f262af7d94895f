import { english } from '@cribwright/messages/testing';
import { expect, it } from 'vitest';
import { check } from '../../testing/check.js';
import { crib, foot, inch, planOf, vanTrailer } from '../../testing/sample-plans.js';
import { rule } from './rule.js';

const found = (captures: ReturnType<typeof crib>['captures']) =>
  check(
    rule,
    planOf({ vehicles: [vanTrailer], cribs: [crib('A', 19.5 * foot, -42.75 * inch, { captures })] }),
  );
const { captures } = crib('A', 0, 0);

it('passes a crib loaded on all contacts', () => expect(found(captures)).toEqual([]));
// By hand: contacts stand 6.25 in off the middle, and a sixth of 16 in is 2.67 in.
it('says how far off its middle a crib is loaded', () =>
  expect(english(found(captures.slice(0, 1))[0]?.message)).toContain(
    'loaded 6 1/4 in off its middle (1, 3 contacts). More than 2 5/8 in off (16 in ÷ 6)',
  ));
