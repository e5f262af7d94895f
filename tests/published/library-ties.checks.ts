import { lb } from '@cribwright/units/internal';
import type { Check, Subject } from './check.js';
import { planFrom } from './library-text.js';
import { published } from './sources.js';

const SECTION = '49 CFR 393.108';

/** Diameters in the order of the regulation's table, in inches. */
const diameters = ['1/4', '5/16', '3/8', '7/16', '1/2', '5/8', '3/4'] as const;

/** Working load limits in pounds, as 49 CFR 393.108 prints them. A gap is a cell that the table leaves empty. */
const chains: Readonly<Record<string, readonly (number | undefined)[]>> = {
  '30': [1300, 1900, 2650, 3700, 4500, 6900],
  '43': [2600, 3900, 5400, undefined, 9200, 13_000],
  '70': [3150, 4700, 6600, 8750, 11_300, 15_800],
  '80': [3500, 4500, 7100, undefined, 12_000, 18_100],
  '100': [4300, 5700, 8800, undefined, 15_000, 22_600],
};
const wireRope = [1400, 2100, 3000, undefined, 5300, 8300, 10_900];
const webbing = [
  ['1_75in', '1.75 in', 1750],
  ['2in', '2 in', 2000],
  ['4in', '4 in', 4000],
] as const;

const rating = (keyword: string, type: string, what: string, expected: number, table: string): Check => ({
  what,
  source: published(SECTION, `${table}, working load limit`),
  expected,
  computed: async () => {
    const plan = await planFrom(
      `vehicle van : VanTrailer53\n${keyword} T : ${type} { from van rail 10 ft, driver side to van rail 20 ft, driver side }`,
    );
    return (plan.ties[0]?.gear.rating ?? Number.NaN) / lb;
  },
  within: 0.5,
  unit: 'lb',
});

const sized = (
  values: readonly (number | undefined)[],
  make: (size: string, value: number) => Check,
): readonly Check[] =>
  values.flatMap((value, i) => (value === undefined ? [] : make(diameters[i] ?? '', value)));

const spelled = (size: string): string => `${size.replace('/', '_')}in`;

export const subject: Subject = {
  subject: 'library: straps, chains and wire rope',
  checks: [
    ...webbing.map(([name, size, value]) =>
      rating('strap', `RatchetStrap${name}`, `webbing ${size}`, value, 'webbing table'),
    ),
    ...Object.entries(chains).flatMap(([grade, values]) =>
      sized(values, (size, value) =>
        rating(
          'chain',
          `Chain${grade}_${spelled(size)}`,
          `chain grade ${grade}, ${size} in`,
          value,
          'chain table',
        ),
      ),
    ),
    ...sized(wireRope, (size, value) =>
      rating(
        'wire rope',
        `WireRope_${spelled(size)}`,
        `wire rope ${size} in`,
        value,
        'wire rope table, 6 by 37',
      ),
    ),
  ],
};
