import type { Crib } from '@cribwright/model';
import { asphalt, crib, foot, planOf, psf } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const sand = { ...asphalt, surface: { ...asphalt.surface, name: 'sand', bearing: 2000 * psf } };
const pad = (side: number) =>
  ({
    kind: 'pad',
    id: 'pad/P1',
    name: 'P1',
    length: side * foot,
    width: side * foot,
    thickness: 0.1,
    under: 'crib/A',
    ref: { element: 'pad/P1' },
  }) as const;
const found = (change: Partial<Crib>, plan: Parameters<typeof planOf>[0] = {}) =>
  check(rule, planOf({ ground: sand, ...plan, cribs: [crib('A', 1, 1, change)] })).map((f) => f.message.id);

describe('crib-base', () => {
  it('wants a solid base on ground that is not paved', () => {
    expect(found({ base: 'open' })).toEqual(['crib-base.open-on-soft']);
    expect(found({ base: 'solid' })).toEqual([]);
    expect(found({ base: 'open' }, { ground: asphalt })).toEqual([]);
  });
  it('takes a pad for it, if it is long enough', () => {
    expect(found({ base: 'open' }, { pads: [pad(2)] })).toEqual([]);
    expect(found({ base: 'open' }, { pads: [pad(1.5)] })).toEqual(['crib-base.short-pad']);
  });
  it('finds a pad that is not there', () =>
    expect(found({ standsOn: { kind: 'pad', pad: 'pad/P9' } })).toEqual(['crib-base.no-pad']));
});
