import { english } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { crib, foot, inch, planOf, policyWith, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const side = 42.75 * inch;
const planWith = (
  change: Parameters<typeof crib>[3],
  y = -side,
  policy = policyWith('most shims', 2 * inch),
) => planOf({ vehicles: [vanTrailer], cribs: [crib('A', 19.5 * foot, y, change)], policy });
const found = (...given: Parameters<typeof planWith>) => check(rule, planWith(...given));

describe('crib-packing', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));

  // Two courses of 3.5 in are 7 in; the rail is at 40 in: 31.5 in of shims leave 1.5 in for the wedges.
  it('finds 31.5 in of shims on a crib of 7 in, and offers courses', () => {
    const [finding] = found({ courses: 2, shims: 31.5 * inch });
    expect(finding).toMatchObject({
      severity: 'danger',
      at: { element: 'crib/A', property: 'shims' },
      message: { id: 'crib-packing.shims' },
    });
    expect(english(finding?.message)).toContain('has 31 1/2 in of shims. The limit is 2 in');
    expect(english(finding?.message)).toContain('Use 11 courses and no shims.');
    expect(finding?.fixes[0]?.edits).toEqual([
      { kind: 'set', at: { element: 'crib/A', property: 'courses' }, text: '11' },
      { kind: 'set', at: { element: 'crib/A', property: 'shims' }, text: '0 in' },
    ]);
  });

  it('finds it on either side', () =>
    expect(found({ courses: 2, shims: 31.5 * inch }, side)).toHaveLength(1));

  it('lets shims be as thick as the limit, and no thicker', () => {
    const thin = {
      courses: 10,
      shims: 2 * inch,
      wedges: { pairs: 4, travel: between(0.5 * inch, 3 * inch), preload: 0 },
    };
    expect(found({ ...thin, shims: 2.01 * inch })[0]?.message.id).toBe('crib-packing.shims');
    // 10 courses are 35 in: 5 in are left. 2 in of shims and 3 in of wedges are more than 4 in in all.
    const [finding] = found(thin);
    expect(finding?.message.id).toBe('crib-packing.packing');
    expect(english(finding?.message)).toContain('has 5 in of shims and wedges');
    // With 12 courses of a 3.25 in gap: 1.25 in and 2 in.
    expect(found({ courses: 11, shims: 0.5 * inch })).toEqual([]);
  });

  it('holds a wedge that alone is more than all packing may be', () => {
    const wedges = { pairs: 4, travel: between(0.5 * inch, 5 * inch), preload: 0 };
    expect(found({ courses: 10, wedges })[0]?.at).toEqual({ element: 'crib/A', property: 'wedges' });
  });

  it('takes the policy of the department', () =>
    expect(found({ shims: 1 * inch }, -side, policyWith('most shims', 0.5 * inch))).toHaveLength(1));
});
