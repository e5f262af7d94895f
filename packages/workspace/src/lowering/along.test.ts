import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import { foot, made, planWith } from '../testing/plan-with.js';

const crib = (name: string, at: string) =>
  `  crib ${name} { timber Fir4x4 24 in long; layout 2 by 2; courses 11; at ${at}; captures rail }\n`;
const xOf = (at: string, more = ''): number | undefined => {
  const x = planWith(crib('A', at) + more).cribs.find((c) => c.name === 'A')?.at.x;
  return x === undefined ? undefined : x / foot;
};

/** A van trailer of 53 ft: kingpin 3 ft back, axles 46 ft 6 in and 50 ft 6 in back. */
describe('a place as a crew measures it', () => {
  it.each([
    ['21 ft, driver side 3 ft', 21],
    ['21 ft from the front, driver side 3 ft', 21],
    ['4 ft from the rear, driver side 3 ft', 49],
    ['6 ft ahead of axle 1, driver side 3 ft', 40.5],
    ['6 ft 6 in behind trailer axle 1, driver side 3 ft', 53],
    ['18 ft behind kingpin, driver side 3 ft', 21],
    ['1.5 m ahead of trailer kingpin', 3 - 1.5 / 0.3048],
  ])('%s', (at, feet) => expect(xOf(at)).toBeCloseTo(feet, 9));

  it('counts from another support, and from one that is measured itself', () => {
    const b = crib('B', '6 ft ahead of axle 1, passenger side 3 ft');
    expect(xOf('2 ft behind B, driver side 3 ft', b)).toBeCloseTo(42.5, 9);
    expect(xOf('0 ft behind C', `${b}${crib('C', '2 ft ahead of B')}`)).toBeCloseTo(38.5, 9);
    expect(
      xOf('1 ft behind N', '  anchor N { at 3 ft from the rear, driver side 14 ft; holds 4,000 lb }\n'),
    ).toBeCloseTo(51, 9);
  });

  it('holds for heads, bases, straps, loads and ways out too', () => {
    const plan = planWith(
      `  strut S1 : Strut4to8ft {
    head trailer rail near 6 ft ahead of axle 1, driver side
    base at 6 ft ahead of axle 1, driver side 8 ft
    lock pinned
  }
  strap T1 : RatchetStrap4in { from S1 base to trailer rail 3 ft from the rear, passenger side }
  load push { on trailer; at 3 ft behind kingpin, driver side 3 ft, 5 ft high; force 100 lb; toward passenger side }
  egress W { from 2 ft behind S1, driver side 9 ft; to 2 ft behind S1, driver side 20 ft }
`,
    );
    const [strut] = plan.struts;
    expect([strut?.head.x, strut?.foot.x].map((x) => (x ?? 0) / foot)).toEqual([
      expect.closeTo(40.5, 9),
      expect.closeTo(40.5, 9),
    ]);
    const to = plan.ties[0]?.to;
    expect(to?.kind === 'vehicle part' ? to.x / foot : undefined).toBeCloseTo(50, 9);
    expect((plan.toolLoads[0]?.at.x ?? 0) / foot).toBeCloseTo(6, 9);
    expect(plan.egress[0]?.points.map((p) => p.x / foot)).toEqual([
      expect.closeTo(42.5, 9),
      expect.closeTo(42.5, 9),
    ]);
  });

  it('is ahead of an axle toward the front of its own vehicle, where that faces the other way', () => {
    const other = '  vehicle other : VanTrailer53 { at 120 ft, center; heading opposite }\n';
    // Its front is 120 ft back, so that its axle 1 is 73 ft 6 in back, and ahead of it is farther back.
    expect(xOf('6 ft ahead of other axle 1', other)).toBeCloseTo(79.5, 9);
  });

  it.each([
    ['3 ft behind rail, driver side 3 ft', '', 'no single place'],
    ['3 ft behind B', crib('B', '3 ft behind A'), 'placed by this one'],
    [
      '3 ft behind car axle 1',
      '  vehicle car : Sedan { at 25 ft, passenger side 1 ft; heading across to passenger side }\n',
      'stands across',
    ],
    ['3 ft behind axle 9', '', 'axle'],
    ['3 ft behind Z', '', 'Z'],
  ])('is refused, and the crib left out, where it means nothing: %s', (at, more, why) => {
    const { problems, plan } = made(`use "library/vehicles.crib"

plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 { cargo 20,000 lb from 4 ft to 48 ft }
${crib('A', at) + more}}
`);
    expect(problems.map((p) => english(p.message)).join('\n')).toContain(why);
    expect(plan).toBeDefined();
    expect(plan?.cribs.some((c) => c.name === 'A')).toBe(false);
  });
});
