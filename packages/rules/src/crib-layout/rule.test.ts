import { english } from '@cribwright/messages/testing';
import { crib, inch, planOf, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (change: Parameters<typeof crib>[3]) =>
  check(rule, planOf({ cribs: [crib('A', 0, 0, change)] })).map((f) => english(f.message));

describe('crib-layout', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it.each([
    [{ layout: { lengthwise: 1, crosswise: 2 } }, 'has 1 timber in a course'],
    [
      { layout: { lengthwise: 5, crosswise: 2 } },
      '5 timbers of 3 1/2 in do not fit side by side in 16 in. The limit is 4',
    ],
    [{ overhang: 12 * inch }, 'leave no width between the contacts'],
    [{ courses: 0 }, 'has 0 courses. The minimum is 1'],
    [{ courses: 3.5 }, 'has 3.5 courses. The number of courses must be whole. Use 3'],
  ])('%o', (change, words) => expect(found(change)).toEqual([expect.stringContaining(words)]));
  it('takes as many as just fit', () =>
    expect(found({ layout: { lengthwise: 4, crosswise: 4 } })).toEqual([]));
});
