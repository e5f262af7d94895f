import { english } from '@cribwright/messages/testing';
import { crib, foot, inch, planOf, sedan, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (vehicle: string, part: string) =>
  check(
    rule,
    planOf({
      vehicles: [vanTrailer],
      cribs: [
        crib('A', 0, 0, { captures: [{ vehicle, part, ref: { element: 'crib/A', property: 'captures' } }] }),
      ],
    }),
  ).map((f) => english(f.message));

describe('part-cannot-bear', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('says why a part may not bear, and which may', () =>
    expect(found(vanTrailer.id, 'kingpin')).toEqual([
      'The kingpin of the trailer cannot bear, and crib A captures it. Parts that can bear: rail, joists and landing gear. It sits in the fifth wheel.',
    ]));
  it('names a part that is not there', () =>
    expect(found(vanTrailer.id, 'wing')[0]).toContain('The trailer has no wing, and crib A captures it.'));
  it('names a vehicle that is not there', () =>
    expect(found('vehicle/bus', 'rail')[0]).toContain('vehicle/bus is not in this plan'));
});

describe('part-cannot-bear, of what a support stands on', () => {
  const roof = { kind: 'vehicle', vehicle: sedan.id, part: 'roof' } as const;
  const sills = { ...roof, part: 'sills' } as const;
  const onCar = crib('A', 25 * foot, -43 * inch, { courses: 2, standsOn: roof });
  const messagesOf = (parts: Parameters<typeof planOf>[0]) =>
    check(rule, planOf({ vehicles: [vanTrailer, sedan], ...parts })).map((f) => english(f.message));

  it('finds a crib on a sheet metal roof', () => {
    const [finding] = check(rule, planOf({ vehicles: [vanTrailer, sedan], cribs: [onCar] }));
    expect(finding).toMatchObject({ severity: 'danger', at: { element: 'crib/A', property: 'stands on' } });
    expect(english(finding?.message)).toBe(
      'The roof of the car cannot bear, and crib A stands on it. Stand it on the ground, or on a part that can bear. Sheet metal.',
    );
  });

  it('finds it in any order of vehicles and cribs, on either side', () => {
    const other = crib('B', 19.5 * foot, 43 * inch);
    const mirrored = crib('A', 25 * foot, 43 * inch, { courses: 2, standsOn: roof });
    for (const cribs of [[onCar, other], [other, onCar], [mirrored]])
      for (const vehicles of [
        [vanTrailer, sedan],
        [sedan, vanTrailer],
      ])
        expect(messagesOf({ vehicles, cribs })).toHaveLength(1);
  });

  it('finds a step chock on it', () => {
    const chock = {
      kind: 'step chock',
      id: 'step chock/SC1',
      name: 'SC1',
      at: { x: 25 * foot, y: -43 * inch },
      heights: [4 * inch],
      capacity: undefined,
      captures: onCar.captures,
      standsOn: roof,
      source: { kind: 'invented' },
      ref: { element: 'step chock/SC1' },
    } as const;
    expect(messagesOf({ stepChocks: [chock] })[0]).toContain(
      'The roof of the car cannot bear, and step chock SC1 stands on it.',
    );
  });

  it('passes a part that may bear, and the ground', () => {
    expect(messagesOf({ cribs: [{ ...onCar, standsOn: sills }] })).toEqual([]);
    expect(messagesOf({ cribs: [{ ...onCar, standsOn: { kind: 'ground' } }] })).toEqual([]);
  });
});
