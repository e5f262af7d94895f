import type { Analysis } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { exactly } from '@cribwright/model';
import { crib, planOf, strut, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { foot, inch } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import type { Check, Subject } from './check.js';
import { type AnyReference, closedForm } from './sources.js';

/**
 * Whole analyses held against sums on paper. The sample: a van trailer of 14,000 lb empty with 36,000 to 42,000 lb
 * inside, a car under its rail, four cribs of eleven courses, four struts with their heads 40 in up and their feet
 * 38 in out, tied in pairs.
 */
const analysis = analyze(trailerOnCar);

const figure = (a: Analysis, support: string, key: string): Figure | undefined =>
  a.supports.find((s) => s.id === support)?.figures[key];
const high = (f: Figure | undefined): number => f?.value?.high ?? Number.NaN;

const row = (
  what: string,
  expected: number,
  within: number,
  unit: string,
  computed: () => number,
  source: AnyReference,
): Check => ({ what, source, expected, within, unit, computed });

const degree = Math.PI / 180;
const trailer = analysis.bodies.find((b) => b.vehicle === 'vehicle/trailer');
const ground = (element: string) => analysis.ground.find((g) => g.element === element);
// The empty trailer's center: 5,400 lb on the kingpin at 3 ft, 4,300 lb on axles at 46.5 and 50.5 ft.
const emptyCenter = (5400 * 3 + 4300 * (46.5 + 50.5)) / 14_000;
const upright = 40 / Math.hypot(40, 38);

/** What soft ground needs under a strut of the same sample: it bears 500 lb a square foot. */
const soft = () => {
  const surface = { ...trailerOnCar.ground.surface, bearing: (500 * lb) / foot ** 2 };
  const a = analyze({ ...trailerOnCar, ground: { ...trailerOnCar.ground, surface } });
  const found = a.ground.find((g) => g.element === 'strut/S4');
  return high(found?.padNeeded) / (high(found?.load) / ((500 * lb) / foot ** 2));
};

/** A strut that is 8 ft long needs the 8 ft row; one of 6 ft 1 in as well. */
const rated = (length: number) => {
  const one = strut('S1', 10 * foot, 0, 0);
  const head = { ...one.head, z: { low: length * inch, high: length * inch } };
  return (
    high(
      figure(analyze(planOf({ vehicles: [vanTrailer], struts: [{ ...one, head }] })), 'strut/S1', 'capacity'),
    ) / lb
  );
};

/**
 * The trailer on four cribs alone: no tires, nothing under the kingpin. By hand, in lb and ft:
 *
 * - weight: 2 × 4,300 + 10,000 = 18,600, with its center (4,300 × (46.5 + 50.5) + 10,000 × 30) ÷ 18,600 = 38.5538 back
 *   and 10,000 × 0.5 ÷ 18,600 = 0.26882 to the passenger side;
 * - contacts: cribs 12.5 and 40.5 back and 42.75 in to each side, so that their middle is 26.5 back. On each crib the
 *   contacts are 16 in outside to outside on timbers of 3.5 in, so 6.25 in to each side of its middle. From the middle
 *   of all: x = ±(14 ± 0.52083), y = ±(3.5625 ± 0.52083). Σ x² = 16 (14² + 0.52083²) = 3,140.34,
 *   Σ y² = 16 (3.5625² + 0.52083²) = 207.40;
 * - sixteen equal springs under a stiff body: N = W ÷ 16 + W ex x ÷ Σ x² + W ey y ÷ Σ y², with ex = 12.0538;
 * - at x 14.5208, y 4.0833: 1,162.50 + 71.393 × 14.5208 + 24.108 × 4.0833 = 1,162.50 + 1,036.69 + 98.44 = 2,297.63;
 * - at x −14.5208, y −4.0833: 1,162.50 − 1,036.69 − 98.44 = 27.37;
 * - crib at 14, 3.5625: 4 × (1,162.50 + 71.393 × 14 + 24.108 × 3.5625) = 8,991.57.
 */
const onFour = analyze(
  planOf({
    vehicles: [
      {
        ...vanTrailer,
        parts: vanTrailer.parts.map(({ carries: _, ...part }) => part),
        axles: vanTrailer.axles.map((a) => ({ ...a, missing: ['driver', 'passenger'] })),
        cargo: vanTrailer.cargo.map((c) => ({
          ...c,
          weight: exactly(10_000 * lb),
          center: exactly(30 * foot),
          offset: exactly(0.5 * foot),
        })),
      },
    ],
    cribs: [
      crib('A', 12.5 * foot, -42.75 * inch),
      crib('B', 12.5 * foot, 42.75 * inch),
      crib('C', 40.5 * foot, -42.75 * inch),
      crib('D', 40.5 * foot, 42.75 * inch),
    ],
  }),
);
const RIGID_ON_SPRINGS = 'W ÷ n + W ex x ÷ Σ x² + W ey y ÷ Σ y²: a stiff body on sixteen equal contacts';
const contactLoad = (id: string, number: number): number =>
  high(onFour.supports.find((s) => s.id === id)?.contacts.find((c) => c.number === number)?.load) / lb;

export const subject: Subject = {
  subject: 'A whole plan, by hand',
  checks: [
    row(
      'trailer: heaviest',
      56_000,
      1e-6,
      'lb',
      () => high(trailer?.weight) / lb,
      closedForm('5,400 + 2 × 4,300 + 42,000'),
    ),
    row(
      'trailer: center farthest forward',
      (14_000 * emptyCenter + 42_000 * (4 + 44 / 3)) / 56_000,
      1e-9,
      'ft',
      () => (trailer?.center.x.value?.low ?? Number.NaN) / foot,
      closedForm('Σ w x / Σ w, cargo at its heaviest at the first third of 4 to 48 ft'),
    ),
    row(
      'trailer: center farthest back',
      (14_000 * emptyCenter + 42_000 * (48 - 44 / 3)) / 56_000,
      1e-9,
      'ft',
      () => high(trailer?.center.x) / foot,
      closedForm('Σ w x / Σ w, cargo at its heaviest at the last third of 4 to 48 ft'),
    ),
    row(
      'crib of 11 courses: height',
      38.5,
      1e-9,
      'in',
      () => high(figure(analysis, 'crib/A', 'height')) / inch,
      closedForm('11 × 3.5 in'),
    ),
    row(
      'crib: width outside to outside of contacts',
      16,
      1e-9,
      'in',
      () => high(figure(analysis, 'crib/A', 'width')) / inch,
      closedForm('24 in − 2 × 4 in'),
    ),
    row(
      'crib set snug: load as built',
      0,
      1e-6,
      'lb',
      () => high(figure(analysis, 'crib/A', 'asBuilt')) / lb,
      closedForm('nothing has changed since it was set'),
    ),
    row(
      'strut: length',
      55.17246,
      5e-6,
      'in',
      () => high(figure(analysis, 'strut/S1', 'length')) / inch,
      closedForm('√(40² + 38²)'),
    ),
    row(
      'strut: angle to the ground',
      46.4688,
      5e-6,
      'deg',
      () => high(figure(analysis, 'strut/S1', 'angle')) / degree,
      closedForm('atan(40 ÷ 38)'),
    ),
    row(
      'strut of 6 ft 1 in: the 8 ft row of its table counts',
      7000,
      1e-6,
      'lb',
      () => rated(73),
      closedForm('rows 4, 6 and 8 ft: never between rows'),
    ),
    row(
      'strut of 6 ft: its own row counts',
      10_000,
      1e-6,
      'lb',
      () => rated(72),
      closedForm('rows 4, 6 and 8 ft'),
    ),
    row(
      'tie between two feet, over the strut’s force',
      (38 / 40) * upright - 0.3 * upright,
      1e-3,
      '',
      () => high(figure(analysis, 'tie/T2', 'load')) / high(figure(analysis, 'strut/S4', 'load')),
      closedForm('S cos θ − μ S sin θ, μ 0.3'),
    ),
    row(
      'solid base of six 4×4 of 24 in: area',
      504,
      1e-6,
      'in2',
      () => high(ground('crib/C')?.area) / inch ** 2,
      closedForm('6 × 3.5 in × 24 in'),
    ),
    row(
      'contact of a crib that carries most of a trailer off its middle',
      2297.63,
      0.005,
      'lb',
      () => contactLoad('crib/D', 4),
      closedForm(RIGID_ON_SPRINGS),
    ),
    row(
      'contact of a crib that carries least of it',
      27.37,
      0.005,
      'lb',
      () => contactLoad('crib/A', 1),
      closedForm(RIGID_ON_SPRINGS),
    ),
    row(
      'all contacts of the crib that carries most of it',
      8991.57,
      0.005,
      'lb',
      () => high(figure(onFour, 'crib/D', 'load')) / lb,
      closedForm('W ÷ 4 + 4 (W ex x ÷ Σ x² + W ey y ÷ Σ y²) at its middle, x 14 ft, y 3 ft 6.75 in'),
    ),
    row(
      'pad for a foot on ground of 500 psf, over load ÷ 500 psf',
      1,
      1e-9,
      '',
      soft,
      closedForm('load ÷ allowable'),
    ),
  ],
};
