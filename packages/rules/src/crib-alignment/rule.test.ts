import { english } from '@cribwright/messages/testing';
import {
  crib,
  degree,
  foot,
  inch,
  planOf,
  tractor,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const onFrame = (y: number, part = 'frame') =>
  check(
    rule,
    planOf({
      vehicles: [tractor],
      cribs: [
        crib('A', 10 * foot, y, {
          captures: [],
          timber: { ...crib('A', 0, 0).timber, length: 42 * inch },
          standsOn: { kind: 'vehicle', vehicle: tractor.id, part },
        }),
      ],
    }),
  );

describe('crib-alignment', () => {
  it('passes cribs on the ground', () => expect(check(rule, trailerOnCar)).toEqual([]));
  // By hand: 42 in timbers, 34 in between the outsides, contacts 15.25 in off the middle; rails from 15.5 to 18.5 in.
  it('passes a crib across both frame rails', () => expect(onFrame(0)).toEqual([]));
  it('finds contacts beside the frame', () =>
    expect(english(onFrame(3 * inch)[0]?.message)).toContain(
      'contact 1: 3 1/4 in off the frame of the tractor below it. The limit is 1 in',
    ));
  it('names a part that is not there', () =>
    expect(onFrame(0, 'wing')[0]?.message.id).toBe('crib-alignment.no-part-below'));
  it('finds a capture that slopes', () => {
    const pitched = (angle: number) =>
      planOf({
        vehicles: [{ ...vanTrailer, position: { kind: 'pitched', angle: angle * degree } }],
        cribs: [crib('A', 19.5 * foot, -42.75 * inch)],
      });
    expect(check(rule, pitched(9))).toEqual([]);
    expect(english(check(rule, pitched(12))[0]?.message)).toContain('slopes 12 deg. The limit is 10 deg');
  });
});
