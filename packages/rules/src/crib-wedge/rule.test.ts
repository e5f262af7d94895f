import { english } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { crib, foot, inch, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (wedges: ReturnType<typeof crib>['wedges']) =>
  check(rule, planOf({ vehicles: [vanTrailer], cribs: [crib('A', 19.5 * foot, -42.75 * inch, { wedges })] }));
const travel = between(0.5 * inch, 2 * inch);

it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
it('wants a pair for each loaded contact', () => {
  const [finding] = found({ pairs: 1, travel, preload: 0 });
  expect(english(finding?.message)).toBe(
    'Crib A has 1 pair of wedges for 4 loaded contacts. A contact without wedges may not be snug. Use 4 pairs.',
  );
  expect(finding?.fixes[0]?.edits[0]).toMatchObject({ text: '4 pairs' });
});
it('says so where there are none', () => expect(found(undefined)[0]?.message.id).toBe('crib-wedge.none'));
it('does not stretch wedges', () =>
  expect(english(found({ pairs: 4, travel: between(0, 3 * inch), preload: 0 })[0]?.message)).toContain(
    'each pair of wedges must close 3 in. The limit is 2 in',
  ));
