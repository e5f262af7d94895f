import { rest, type Spring } from '@cribwright/engine';
import type { Check, Subject } from './check.js';
import { force, onGround } from './resting-system.js';
import { type AnyReference, closedForm, published } from './sources.js';

const OPENSTAX = (locator: string) =>
  published('OpenStax University Physics, volume 1, section 12.2', locator);
const OPENSTAX_COLLEGE = published('OpenStax College Physics, section 9.4', 'drawbridge piers, answer');

const row = (
  what: string,
  expected: number,
  within: number,
  unit: string,
  computed: () => number | Promise<number>,
  source: AnyReference,
): Check => ({ what, source, expected, within, unit, computed });

// Two supports in a line and a third on the far side keep a beam from rolling; a beam on a line needs none.
const beam = (weight: number, at: number, supports: readonly number[]) =>
  rest(
    onGround(
      weight,
      [at, 0],
      supports.map((x) => [x, 0]),
    ),
  );

/** Example 12.3: 50 g at −70 cm, 75 g at −40 cm, the stick's 150 g at −20 cm and 316.67 g at 30 cm: where they balance. */
const meterStick = (50 * -0.7 + 75 * -0.4 + 150 * -0.2 + (95 / 0.3) * 0.3) / (50 + 75 + 150 + 95 / 0.3);

/** Four supports in a rectangle, 2 m across: front left, front right, rear left, rear right. */
const square = (front: number, rear: number) =>
  [front, rear].flatMap((x) => [-1, 1].map((y) => [x, y] as const));

/** A 6 m scaffold of 40 kg, a painter of 80 kg at 1 m, a kit of 16 kg at 4.5 m. g = 9.8. */
const painter = () => {
  const kg = 40 + 80 + 16;
  return beam(kg * 9.8, (40 * 3 + 80 * 1 + 16 * 4.5) / kg, [0, 6]);
};

// A rigid cap on equal piles: W 900 kN, 0.4 m and 0.3 m off the middle of nine piles at 2 m by 1.5 m.
const pile = { weight: 900, x: 0.4, y: 0.3 };
const piles = [-2, 0, 2].flatMap((x) => [-1.5, 0, 1.5].map((y) => [x, y] as const));
const pileForce = ([x, y]: readonly [number, number]): number =>
  pile.weight / 9 +
  (pile.weight * pile.x * x) / piles.reduce((s, p) => s + p[0] ** 2, 0) +
  (pile.weight * pile.y * y) / piles.reduce((s, p) => s + p[1] ** 2, 0);
const pileRow = (index: number): Check => {
  const at = piles[index] ?? [Number.NaN, Number.NaN];
  return row(
    `pile group of nine, pile at ${at[0]} m, ${at[1]} m`,
    pileForce(at),
    1e-9,
    'kN',
    () => force(rest(onGround(pile.weight, [pile.x, pile.y], piles)), index),
    closedForm('W/n + W e_x x / Σx² + W e_y y / Σy²'),
  );
};

/** A body at the ends of 10 m, and a support set snug under it at 4 m afterward. */
const snug = (lost: ReadonlySet<string>) => {
  const system = onGround(
    1000,
    [5, 0],
    [
      [0, 0],
      [10, 0],
      [4, 0],
    ],
  );
  const before = rest(system, [], new Set(['2']));
  const closing = before.kind === 'rests' ? (before.closings[2] ?? Number.NaN) : Number.NaN;
  return rest(system, [undefined, undefined, { preload: 0, closing }], lost);
};

/** A trailer of 30 kN on two supports and on a car of 14 kN that stands on four wheels. */
const onCar = () => {
  const spring = (id: string, upper: string, lower: string, x: number, y: number): Spring => ({
    id,
    upper,
    lower,
    x,
    y,
    stiffness: 2e5,
  });
  return rest({
    bodies: [
      { id: 'trailer', weight: 30, x: 4, y: 0 },
      { id: 'car', weight: 14, x: 6, y: 1 },
    ],
    springs: [
      spring('front', 'trailer', 'ground', 0, 0),
      spring('left', 'trailer', 'ground', 6, -1),
      spring('roof', 'trailer', 'car', 6, 1),
      ...[5, 7].flatMap((x) => [0, 2].map((y) => spring(`wheel ${x} ${y}`, 'car', 'ground', x, y))),
    ],
  });
};

export const subject: Subject = {
  subject: 'Bodies at rest',
  checks: [
    row(
      'drawbridge, pier on the left',
      7350,
      0.5,
      'N',
      () => force(beam(1000 * 9.8, 5, [0, 20]), 0),
      OPENSTAX_COLLEGE,
    ),
    row(
      'drawbridge, pier on the right',
      2450,
      0.5,
      'N',
      () => force(beam(1000 * 9.8, 5, [0, 20]), 1),
      OPENSTAX_COLLEGE,
    ),
    row(
      'painter on a scaffold, left cable',
      888.5,
      0.1,
      'N',
      () => force(painter(), 0),
      OPENSTAX('painter, answer'),
    ),
    row(
      'painter on a scaffold, right cable',
      444.3,
      0.1,
      'N',
      () => force(painter(), 1),
      OPENSTAX('painter, answer'),
    ),
    row(
      'meter stick balanced by 317 g at 30 cm: support',
      5.8,
      0.05,
      'N',
      () => force(beam(0.05 + 0.075 + 0.15 + 0.31667, meterStick, [0]), 0) * 9.8,
      OPENSTAX('example 12.3'),
    ),
    row(
      'plank of 30 kg over its support by 1.2 m of 3 m, 20 kg at its end: far support',
      0,
      1e-6,
      'N',
      () => force(beam(50 * 9.8, (30 * 3 + 20 * 6) / 50, [0, 4.2]), 0),
      closedForm('30 × 1.2 = 20 × 1.8: it balances on the edge'),
    ),
    ...[0, 4, 5, 8].map(pileRow),
    row(
      'three equal supports under a rigid beam, load at the middle',
      1 / 3,
      1e-12,
      'W',
      () =>
        force(
          rest(
            onGround(
              1,
              [1, 0],
              [
                [0, 0],
                [1, 0],
                [2, 0],
              ],
            ),
          ),
          0,
        ),
      closedForm('W/n, no eccentricity'),
    ),
    row(
      'supports of stiffness 1 and 3, load between them by statics',
      0.5,
      1e-12,
      'W',
      () =>
        force(
          rest(
            onGround(
              1,
              [1, 0],
              [
                [0, 0, 1],
                [2, 0, 3],
              ],
            ),
          ),
          0,
        ),
      closedForm('two supports: statics alone, stiffness does not matter'),
    ),
    row(
      'four supports, load near one pair: each far support',
      0.025,
      1e-12,
      'W',
      () => force(rest(onGround(1, [1.9, 0], square(0, 2))), 0),
      closedForm('W (1 − 1.9/2) / 2 = 0.025 W on each far support; none pulls'),
    ),
    row(
      'a corner load on four supports: the far corner',
      0,
      1e-12,
      'W',
      () => force(rest(onGround(1, [0.8, 0.8], square(-1, 1))), 0),
      closedForm('W/4 (1 − 0.8 − 0.8) < 0: it would pull, so it carries nothing'),
    ),
    row(
      'a corner load on four supports: the near corner',
      0.8,
      1e-9,
      'W',
      () => force(rest(onGround(1, [0.8, 0.8], square(-1, 1))), 3),
      closedForm('statics of the three that remain: (0.8 + 0.8) / 2'),
    ),
    row(
      'a support set snug under a body at rest',
      0,
      1e-9,
      'N',
      () => force(snug(new Set()), 2),
      closedForm('nothing has changed since it was placed'),
    ),
    row(
      'the same support when the front one is lost',
      1000 * (5 / 6),
      1e-6,
      'N',
      () => force(snug(new Set(['0'])), 2),
      closedForm('moments about the rear: 1000 × 5 / 6'),
    ),
    row(
      'trailer on a car: what its wheels carry',
      14 + 10,
      1e-9,
      'kN',
      () => [3, 4, 5, 6].reduce((s, i) => s + force(onCar(), i), 0),
      closedForm('trailer: (30 × 4/6) / 2 on the roof; the wheels carry that and the car'),
    ),
    row(
      'trailer on a car: the front support',
      10,
      1e-9,
      'kN',
      () => force(onCar(), 0),
      closedForm('moments about the line through roof and left support: 30 × 2/6'),
    ),
    row(
      'a plank whose center is past its last support rests (1) or falls (0)',
      0,
      0,
      '',
      () => (beam(1, 5, [0, 4]).kind === 'rests' ? 1 : 0),
      closedForm('no pushing forces balance it'),
    ),
  ],
};
