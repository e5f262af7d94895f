import { english } from '@cribwright/messages/testing';
import { fir4x4, planOf, strut, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (change: Parameters<typeof strut>[4]) =>
  check(rule, planOf({ struts: [strut('S1', 4, -1, -2, change)] }));

describe('strut-lock', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('passes one that is backed off onto its lock', () => expect(found({ lock: 'collar' })).toEqual([]));
  it('wants a lock where none is stated', () =>
    expect(english(found({ lock: undefined })[0]?.message)).toContain('lock not stated'));
  it('does not rely on a pump', () => {
    const [finding] = found({ lock: 'pump only' });
    expect(finding?.at).toEqual({ element: 'strut/S1', property: 'lock' });
    expect(finding?.fixes[0]?.edits).toEqual([
      { kind: 'set', at: { element: 'strut/S1', property: 'lock' }, text: 'pinned' },
    ]);
  });
  it('asks for no lock on a timber post', () =>
    expect(
      found({
        lock: undefined,
        gear: { kind: 'timber post', name: 'Post', timber: fir4x4, plies: 1, ref: fir4x4.ref },
      }),
    ).toEqual([]));
});
