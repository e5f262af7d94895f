import { english } from '@cribwright/messages/testing';
import { crib, foot, inch, planOf, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (captures: ReturnType<typeof crib>['captures']) =>
  check(
    rule,
    planOf({ vehicles: [vanTrailer], cribs: [crib('A', 19.5 * foot, -42.75 * inch, { captures })] }),
  );
const { captures } = crib('A', 0, 0);

it('passes a crib loaded on all contacts', () => expect(found(captures)).toEqual([]));
// By hand: contacts stand 6.25 in off the middle, and a sixth of 16 in is 2.67 in.
it('says how far off center a crib is loaded', () =>
  expect(english(found(captures.slice(0, 1))[0]?.message)).toContain(
    'load 6 1/4 in off center (contacts 1 and 3 loaded). The limit is 2 5/8 in (16 in ÷ 6)',
  ));
