import { axleGroups, bridgeFormula, federalLimits } from '@cribwright/engine';
import type { Check, Subject } from './check.js';
import { type AnyReference, published } from './sources.js';

const FHWA = published('FHWA Vehicle Size and Weight questions and answers', '23 CFR 658.17');
const CALIFORNIA = published('California Vehicle Code 35551', 'table');
const PENNSYLVANIA = published('67 Pa. Code 185.3', 'table');
const FHWA_TABLE = published('FHWA-HOP-19-028, bridge formula table', 'as tested in a public calculator');
const EXAMPLE = published('FHWA-HOP-19-028', 'figure 4, example');
const LAW = published('23 U.S.C. 127(a)', 'two consecutive sets of tandem axles');

const cell = (length: number, axles: number, expected: number, source: AnyReference): Check => ({
  what: `bridge formula, ${length} ft and ${axles} axles`,
  source,
  expected,
  unit: 'lb',
  within: 0,
  computed: () => bridgeFormula(length, axles),
});

/** The limit of axles `first` to `last` of a truck with axles at these places. */
const group = (
  what: string,
  at: readonly number[],
  [first, last]: readonly [number, number],
  expected: number,
  source: AnyReference,
): Check => ({
  what,
  source,
  expected,
  unit: 'lb',
  within: 0,
  computed: () => {
    const groups = axleGroups(at.map((place) => ({ at: place, load: 0 })));
    return groups.find((g) => g.first === first && g.last === last)?.limit ?? Number.NaN;
  },
});

const example = [0, 16, 20, 47, 51];

export const subject: Subject = {
  subject: 'Axle limits and the bridge formula',
  checks: [
    group('single axle', [0], [1, 1], 20_000, FHWA),
    group('two axles 40 in apart', [0, 40 / 12], [1, 2], 20_000, FHWA),
    group('tandem, 4 ft', [0, 4], [1, 2], 34_000, FHWA),
    group('tandem, 96 in', [0, 8], [1, 2], 34_000, FHWA),
    group('three axles within 96 in', [0, 4, 8], [1, 3], 34_000, FHWA),
    group('whole combination, 6 axles in 60 ft', [0, 10, 20, 40, 50, 60], [1, 6], 80_000, FHWA),
    {
      what: 'gross limit',
      source: FHWA,
      expected: 80_000,
      unit: 'lb',
      within: 0,
      computed: () => federalLimits.gross,
    },
    cell(9, 2, 39_000, CALIFORNIA),
    cell(10, 2, 40_000, CALIFORNIA),
    cell(9, 3, 42_500, CALIFORNIA),
    cell(10, 3, 43_500, CALIFORNIA),
    cell(12, 3, 45_000, CALIFORNIA),
    cell(12, 4, 50_000, CALIFORNIA),
    cell(16, 4, 52_500, CALIFORNIA),
    cell(20, 3, 51_000, CALIFORNIA),
    cell(20, 4, 55_500, CALIFORNIA),
    cell(24, 3, 54_000, CALIFORNIA),
    cell(24, 4, 58_000, CALIFORNIA),
    cell(28, 3, 57_000, CALIFORNIA),
    cell(16, 5, 58_000, PENNSYLVANIA),
    cell(32, 5, 68_000, PENNSYLVANIA),
    cell(40, 5, 73_000, PENNSYLVANIA),
    cell(43, 5, 75_000, PENNSYLVANIA),
    cell(20, 6, 66_000, PENNSYLVANIA),
    cell(35, 4, 65_500, FHWA_TABLE),
    cell(38, 5, 71_500, FHWA_TABLE),
    cell(51, 5, 80_000, FHWA_TABLE),
    cell(57, 4, 80_000, FHWA_TABLE),
    group('axles 1 to 3 of the example', example, [1, 3], 51_000, EXAMPLE),
    group('axles 2 to 5 of the example, an interior group', example, [2, 5], 65_500, EXAMPLE),
    group('axles 1 to 5 of the example', example, [1, 5], 80_000, EXAMPLE),
    group('two tandems, 36 ft first to last', [0, 16, 20, 48, 52], [2, 5], 68_000, LAW),
    group('two axles just over 8 ft', [0, 8.1], [1, 2], 38_000, PENNSYLVANIA),
    group('three axles just over 8 ft', [0, 4, 8.1], [1, 3], 42_000, PENNSYLVANIA),
  ],
};
