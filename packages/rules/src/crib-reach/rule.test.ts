import { english } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { crib, foot, inch, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const withCrib = (change: Parameters<typeof crib>[3], height = between(40 * inch, 40 * inch)) =>
  planOf({
    vehicles: [
      { ...vanTrailer, parts: vanTrailer.parts.map((p) => (p.form === 'points' ? p : { ...p, height })) },
    ],
    cribs: [crib('A', 19.5 * foot, -42.75 * inch, change)],
  });
const found = (...given: Parameters<typeof withCrib>) => check(rule, withCrib(...given));

describe('crib-reach', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));

  it('states the gap with its calculation, and offers the courses that fit', () => {
    const [finding] = found({ courses: 8 });
    expect(english(finding?.message)).toBe(
      'Crib A does not reach the rail of the trailer. The gap is 12 in (40 in − 28 in). Its wedges close 2 in. ' +
        'Use 11 courses. That leaves a gap of 1 1/2 in for the wedges.',
    );
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({ text: '11' });
  });

  it('says how much too tall a crib is', () =>
    expect(english(found({ courses: 12 })[0]?.message)).toContain(
      'is 2 in too tall for the rail of the trailer (40 in − 42 in)',
    ));

  it('counts no wedges where none are stated, and offers shims', () => {
    const [finding] = found({ wedges: undefined });
    expect(english(finding?.message)).toContain('Its wedges close nothing.');
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({ at: { property: 'shims' }, text: '1.5 in' });
    expect(found({ wedges: undefined, shims: 1.5 * inch })).toEqual([]);
  });

  it('warns where the wedges do not go in', () =>
    expect(found({ shims: 1.25 * inch })[0]).toMatchObject({ severity: 'warning' }));

  it('answers for both ends of a range', () => {
    expect(found({}, between(39 * inch, 40.5 * inch))).toEqual([]);
    const [finding] = found({}, between(39 * inch, 41 * inch));
    expect(english(finding?.message)).toContain('The gap is 2 1/2 in');
    expect(english(finding?.governs)).toBe('the range of the height');
  });

  it('measures to what faces the ground of a vehicle on its roof', () => {
    const plan = withCrib({});
    const vehicles = plan.vehicles.map((v) => ({ ...v, position: { kind: 'on its roof' } as const }));
    // 162 in high, the rail's underside at 40 in and 4 in deep: upside down its lower edge is at 118 in.
    expect(english(check(rule, { ...plan, vehicles })[0]?.message)).toContain('(118 in − 38.5 in)');
  });
});
