import { gravityOn, type PushSystem, type Vector } from '@cribwright/engine';
import { trailerOnCar } from '@cribwright/model/testing';
import type { Check, Subject } from './check.js';
import { at, box, corners, holds, leastThatStands, standing, toward } from './push-system.js';
import { type AnyReference, closedForm, published } from './sources.js';

const OPENSTAX_12 = (locator: string) =>
  published('OpenStax University Physics, volume 1, section 12.2', locator);
const OPENSTAX_6 = published('OpenStax University Physics, volume 1, section 6.2', 'crate example, answer');
const COLLEGE = (locator: string) => published('OpenStax College Physics, section 9.3', locator);
const OPEN_STATICS = (locator: string) =>
  published('Baker and Haynes, Engineering Statics: Open and Interactive', locator);
const degree = Math.PI / 180;
const rear = toward(0);

const row = (
  what: string,
  expected: number,
  within: number,
  unit: string,
  computed: () => number,
  source: AnyReference,
): Check => ({ what, source, expected, within, unit, computed });

// Slip or tip.
const cube = (friction: number) => box({ length: 1, width: 1, height: 2 }, friction);
const pushed = (friction: number, height: number, degrees = 0) =>
  holds(cube(friction), at(0.5, 0, height), toward(degrees));
const tip = (height: number, degrees: number) =>
  0.5 / height / Math.max(Math.abs(Math.cos(degrees * degree)), Math.abs(Math.sin(degrees * degree)));

/** Both feet of a ladder, or of a trestle's leg. */
const feet = (friction: number): PushSystem['contacts'] =>
  [-0.2, 0.2].map((y) => ({ id: `${y}`, upper: 'body', lower: 'ground', at: at(0, y, 0), friction }));

// A ladder of 5.0 m and 400 N at 53 deg; the frictionless wall is a push at its top.
const top = at(5 * Math.cos(53 * degree), 0, 5 * Math.sin(53 * degree));
const ladder = (friction: number): PushSystem =>
  standing({
    bodies: [{ id: 'body', weight: 400, center: at(top.x / 2, 0, top.z / 2) }],
    contacts: feet(friction),
  });
const wall = toward(180);
const ladderStands = (friction: number) => Number.isFinite(holds(ladder(friction), top, wall));
const ladderFriction = () => leastThatStands(0, 2, ladderStands);

// One leg of an A-frame: half of 8.00 kg at its middle; the other leg is a push at the hinge.
const leg = (rating: number): PushSystem =>
  standing({
    bodies: [{ id: 'body', weight: 4 * 9.8, center: at(0.275, 0, 0.65) }],
    contacts: feet(0),
    ties: [
      {
        id: 'tie',
        from: { kind: 'body', body: 'body', at: at((0.55 * 0.8) / 1.3, 0, 0.8) },
        to: { kind: 'ground', at: at(0.55, 0, 0.8) },
        rating,
      },
    ],
  });
const hinge = at(0.55, 0, 1.3);
const legStands = (rating: number) => Number.isFinite(holds(leg(rating), hinge, wall));

// A wall 17.0 m high and 11.0 m long, held by ten braces at 35 deg to it, fastened halfway up.
const braced = (capacity: number): PushSystem =>
  standing({
    bodies: [{ id: 'body', weight: 2e6, center: at(0, 0, 8.5) }],
    contacts: [-5.5, 5.5].map((y) => ({
      id: `${y}`,
      upper: 'body',
      lower: 'ground',
      at: at(0, y, 0),
      friction: 1,
    })),
    struts: Array.from({ length: 10 }, (_, i) => ({
      id: `${i}`,
      body: 'body',
      head: at(0, -4.95 + 1.1 * i, 8.5),
      foot: at(8.5 * Math.tan(35 * degree), -4.95 + 1.1 * i, 0),
      footFriction: 1,
      capacity,
    })),
  });
const wind = 17 * 11 * 650;
const brace = () => (wind / holds(braced(1000), at(0, 0, 8.5), rear)) * 1000;

/** A block on a smooth slope: the push up the slope that it needs, in the slope's own axes. */
const upSlope = (weight: number, gravity: Vector): number =>
  holds(
    standing({
      bodies: [{ id: 'body', weight, center: at(0.5, 0, 0.5) }],
      contacts: corners(1, 1, 0),
      gravity,
    }),
    at(0.5, 0, 0.5),
    toward(180),
  );
const slope = (degrees: number): Vector => at(Math.sin(degrees * degree), 0, -Math.cos(degrees * degree));
const grade = (percent: number): Check => {
  const expected = { 2: 1600, 5: 3995, 8: 6380, 10: 7960, 20: 15_689 }[percent] ?? Number.NaN;
  return row(
    `80,000 lb on a grade of ${percent} %: downhill force`,
    expected,
    0.5,
    'lb',
    () => upSlope(80_000, gravityOn({ ...trailerOnCar.ground, grade: percent / 100, toward: 'rear' })),
    closedForm(`W sin(atan ${percent / 100})`),
  );
};

// A weight on two struts with their feet on ice, tied to each other.
const pair = (rating: number, friction: number): PushSystem =>
  standing({
    bodies: [{ id: 'body', weight: 1000, center: at(0, 0, 2) }],
    struts: [-1, 1].map((side) => ({
      id: `${side}`,
      body: 'body',
      head: at(0, 0, 2),
      foot: at(side, 0, 0),
      footFriction: friction,
      capacity: 1e6,
    })),
    ties:
      rating > 0
        ? [{ id: 'tie', from: { kind: 'foot', strut: '-1' }, to: { kind: 'foot', strut: '1' }, rating }]
        : [],
  });
// Pushed crosswise, so that neither strut is left out.
const pairStands = (rating: number, friction: number) =>
  Number.isFinite(holds(pair(rating, friction), at(0, 0, 2), toward(90)));

// A block beside a strut at 45 deg whose foot is on the far side.
const propped = (footFriction: number, tied: boolean): PushSystem => ({
  ...box({ length: 2, width: 2, height: 2 }, 0.3, 1000),
  struts: [{ id: 'S', body: 'body', head: at(2, 0, 1), foot: at(3, 0, 0), footFriction, capacity: 200 }],
  ties: tied
    ? [{ id: 'T', from: { kind: 'foot', strut: 'S' }, to: { kind: 'ground', at: at(2, 0, 0) }, rating: 1e5 }]
    : [],
});
const prop = (footFriction: number, tied: boolean, degrees = 0) =>
  holds(propped(footFriction, tied), at(1, 0, 0.5), toward(degrees));
// Sliding: push = μ (W − S sin 45) + S cos 45.
const withStrut = 0.3 * (1000 - 200 * Math.SQRT1_2) + 200 * Math.SQRT1_2;

export const subject: Subject = {
  subject: 'Standing up to a push',
  checks: [
    row(
      'crate of 20 kg, friction 0.700: the push that slips it',
      137,
      0.5,
      'N',
      () => holds(box({ length: 1, width: 1, height: 0.5 }, 0.7, 20 * 9.8), at(0.5, 0, 0.1), rear),
      OPENSTAX_6,
    ),
    row(
      'crate of 50 kg on a truck, friction 0.400: greatest friction',
      196,
      0.5,
      'N',
      () => holds(box({ length: 1, width: 1, height: 0.5 }, 0.4, 50 * 9.8), at(0.5, 0, 0.1), rear),
      OPENSTAX_6,
    ),
    row(
      'static stability factor, track 72 in, center at 90 in',
      0.4,
      1e-9,
      'W',
      () =>
        holds(
          standing({
            bodies: [{ id: 'body', weight: 1, center: at(100, 0, 90) }],
            contacts: corners(200, 72, 1),
          }),
          at(100, 0, 90),
          toward(90),
        ),
      published('NHTSA rollover rulemaking, chapter V', 'SSF = T / 2H'),
    ),
    row('block slides at μ W', 0.4, 1e-9, 'W', () => pushed(0.4, 0.5), closedForm('μ W, pushed low')),
    row(
      'block tips at W b / 2h',
      0.25,
      1e-9,
      'W',
      () => pushed(1, 2),
      closedForm('moments about the edge: W × 0.5 / 2'),
    ),
    row(
      'just under the height a / μ it still slides',
      0.5,
      1e-9,
      'W',
      () => pushed(0.5, 0.999),
      published('Through Engineers Eyes, will it tip or slide', 'H = a / μ'),
    ),
    row(
      'above the height a / μ it tips',
      0.4,
      1e-9,
      'W',
      () => pushed(0.5, 1.25),
      published('Through Engineers Eyes, will it tip or slide', 'H = a / μ; moments: W × 0.5 / 1.25'),
    ),
    ...[15, 30, 45, 60, 135, 225].map((d) =>
      row(
        `block tips over an edge, pushed at ${d} deg`,
        tip(2, d),
        1e-9,
        'W',
        () => pushed(1, 2, d),
        closedForm('W a / (h cos φ), φ from the nearest edge’s normal'),
      ),
    ),
    ...[15, 105, 195].map((d) =>
      row(
        `block slides the same in every direction, ${d} deg`,
        0.3,
        1e-9,
        'W',
        () => pushed(0.3, 0.4, d),
        closedForm('μ W'),
      ),
    ),
    row(
      'ladder on a smooth wall: force of the wall',
      150.7,
      0.05,
      'N',
      () => holds(ladder(1), top, wall),
      OPENSTAX_12('example 12.5'),
    ),
    row(
      'ladder on a smooth wall: least friction at the floor',
      0.377,
      0.0005,
      '',
      ladderFriction,
      OPENSTAX_12('example 12.5'),
    ),
    row(
      'ladder on a smooth wall: resultant at the floor',
      427.4,
      0.06,
      'N',
      () => Math.hypot(400, holds(ladder(1), top, wall)),
      OPENSTAX_12('example 12.5'),
    ),
    row(
      'A-frame with a tie: force in the hinge',
      21.6,
      0.05,
      'N',
      () => holds(leg(1000), hinge, wall),
      COLLEGE('A-frame sign, answer'),
    ),
    row(
      'A-frame with a tie: least rating of the tie',
      21.6,
      0.05,
      'N',
      () => leastThatStands(0.1, 1000, legStands),
      COLLEGE('A-frame sign, answer'),
    ),
    row(
      'wall in the wind: force in each of ten braces',
      21_200,
      50,
      'N',
      brace,
      COLLEGE('braced wall, answer'),
    ),
    row(
      'block of 100 lb on a smooth slope of 25 deg: push up the slope',
      43.8 * Math.cos(15 * degree),
      0.05,
      'lb',
      () => upSlope(100, slope(25)),
      OPEN_STATICS('chapter 3, frictionless incline: 43.8 lb at 15 deg to the slope'),
    ),
    row(
      'roller of 160 lb on 10 deg: pull along the slope',
      32.1 * Math.cos(30 * degree),
      0.05,
      'lb',
      () => upSlope(160, slope(10)),
      OPEN_STATICS('chapter 3, roller: 32.1 lb at 30 deg to the slope'),
    ),
    ...[2, 5, 8, 10, 20].map(grade),
    row(
      'a wheel or box stays while tan θ is at most μ: steepest slope, μ 0.5',
      Math.atan(0.5) / degree,
      1e-6,
      'deg',
      () =>
        90 -
        leastThatStands(1, 89, (steep) =>
          Number.isFinite(
            holds(
              { ...box({ length: 1, width: 1, height: 0.1 }, 0.5), gravity: slope(90 - steep) },
              at(0.5, 0, 0),
              toward(90),
            ),
          ),
        ),
      OPENSTAX_6,
    ),
    row(
      'two struts on ice: least rating of the tie between their feet',
      250,
      1e-6,
      'N',
      () => leastThatStands(1, 1000, (rating) => pairStands(rating, 0)),
      closedForm('W / (2 tan θ), tan θ = 2'),
    ),
    row(
      'two struts without a tie: least friction at their feet',
      0.5,
      1e-6,
      '',
      () => leastThatStands(0.1, 1, (friction) => pairStands(0, friction)),
      closedForm('cos θ ≤ μ sin θ, tan θ = 2'),
    ),
    row(
      'strut at 45 deg with an untied foot, friction 0.6: adds nothing',
      300,
      1e-6,
      'N',
      () => prop(0.6, false),
      closedForm('cos θ > μ sin θ: its foot slides; μ W is left'),
    ),
    row(
      'the same strut tied',
      withStrut,
      1e-6,
      'N',
      () => prop(0.6, true),
      closedForm('0.3 (W − S sin 45°) + S cos 45°, S 200 N'),
    ),
    row(
      'the same strut untied on a foot that grips, friction 1',
      withStrut,
      1e-6,
      'N',
      () => prop(1, false),
      closedForm('0.3 (W − S sin 45°) + S cos 45°, S 200 N'),
    ),
    row(
      'a strut that would push the body along adds nothing',
      300,
      1e-6,
      'N',
      () => prop(1, false, 180),
      closedForm('no borrowed preload: μ W'),
    ),
  ],
};
