import { describe, expect, it } from 'vitest';
import { crib, foot, inch, vanTrailer } from '../testing/sample-plans.js';
import { contactsOf } from './contacts.js';

const vehicles = new Map([[vanTrailer.id, vanTrailer]]);
const reach = 2 * inch;
const side = -42.75 * inch;
const parts = (c: ReturnType<typeof crib>) =>
  contactsOf(c, vehicles, reach).map((k) => k.meets?.part.id ?? '-');

describe('what a crib meets', () => {
  it('has its outer pair under the rail and its inner pair under joists', () =>
    expect(parts(crib('A', 19.5 * foot, side))).toEqual(['rail', 'joists', 'rail', 'joists']));

  it('mirrors on the passenger side', () =>
    expect(parts(crib('A', 19.5 * foot, -side))).toEqual(['joists', 'rail', 'joists', 'rail']));

  it('misses joists when it stands between them', () =>
    expect(parts(crib('A', 20 * foot, side))).toEqual(['rail', '-', 'rail', '-']));

  it('takes what a part named alone covers', () => {
    const a = crib('A', 19.5 * foot, side);
    const alone = a.captures.slice(0, 1).map(({ contacts: _, ...c }) => c);
    expect(parts({ ...a, captures: alone })).toEqual(['rail', '-', 'rail', '-']);
  });

  it('grants nothing to a joist beside a timber that runs along it', () =>
    expect(parts({ ...crib('A', 19.5 * foot + 3.5 * inch, side), top: 'crosswise' })).toEqual([
      'rail',
      '-',
      'rail',
      '-',
    ]));

  it('meets nothing on a vehicle that is not there', () =>
    expect(contactsOf(crib('A', 0, 0), new Map(), reach).every((k) => !k.loaded)).toBe(true));
});
