import {
  bearingLengthFactor,
  crossingArea,
  crossingCapacity,
  speciesStress,
  wetServiceFactor,
} from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import type { Policy, Timber } from '@cribwright/model';
import { fir4x4, fir6x6, policyWith } from '@cribwright/model/testing';
import { inch, psi } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import type { Check, Subject } from './check.js';
import { type AnyReference, closedForm, memory, published } from './sources.js';

const RESCUE_SYSTEMS = published(
  'Rescue Systems 1 manual (California State Fire Training, 2000)',
  'chapter 30',
);
const TRADE_FORUM = published('Fire-service trade magazine forum (2008)', '4×4, three timbers a course');
const TRADE_ARTICLE = published(
  'Fire-service trade magazine article on 4×4 and 6×6 stacks',
  'last paragraph',
);
const PUBLIC_PAGE = published('Public page quoting taught crib values', 'how much weight');
const SECTIONS = published('Table of nominal and dressed sizes with areas', 'posts and timbers');
const PS20 = published(
  'PS 20 sizes as tabulated by a public engineering reference',
  'timbers of 7 in and more, dry',
);
const NDS_HELP = published('Wood-design software help on NDS 3.10.4', 'formula');
const NDS_CODE = published('NDS Supplement 2018, Table 4A', 'wet service factor, as coded in xcfem/xc');
const NDS_TABLE = memory('NDS Table 3.10.4');

const eightByEight = (width: number): Timber => ({
  ...fir6x6,
  nominal: '8x8',
  width: width * inch,
  depth: width * inch,
});

const flat = policyWith('crossing basis', 'flat rule');
const unrounded: Policy = {
  ...flat,
  limits: { ...flat.limits, 'crossing rounding': { ...flat.limits['crossing rounding'], value: 0 } },
};
const low = (figure: Figure): number => figure.value?.low ?? Number.NaN;
const crossing = (timber: Timber, policy: Policy, overhang = 4 * inch): number =>
  low(crossingCapacity({ timber, overhang }, policy)) / lb;

const capacity = (
  what: string,
  expected: number,
  within: number,
  computed: () => number,
  source: AnyReference,
): Check => ({ what, source, expected, within, unit: 'lb', computed });

/** Dust of arithmetic, in lb. */
const dust = 1e-6;

const factor = (bearing: number, expected: number, within: number, source: AnyReference): Check => ({
  what: `bearing length factor Cb, ${bearing} in`,
  source,
  expected,
  within,
  unit: '',
  computed: () => bearingLengthFactor(bearing * inch, 4 * inch),
});

const sized = (nominal: string, timber: Timber, expected: number, source: AnyReference): Check => ({
  what: `crossing of ${nominal}`,
  source,
  expected,
  within: 0.005,
  unit: 'in2',
  computed: () => low(crossingArea(timber)) / inch ** 2,
});

/** Across-the-grain stress of a species as the policy `species` takes it. */
const species = (perpendicularToGrain: number, wet: boolean, bearing = 3.5, overhang = 4): number =>
  low(
    speciesStress(
      { ...fir4x4, perpendicularToGrain: perpendicularToGrain * psi, wet, width: bearing * inch },
      overhang * inch,
    ),
  ) / psi;

export const subject: Subject = {
  subject: 'Timber and cribs',
  checks: [
    capacity('4×4, 2 by 2', 24_000, dust, () => 4 * crossing(fir4x4, flat), RESCUE_SYSTEMS),
    capacity(
      '4×4, 3 by 3, rounded at each contact',
      54_000,
      dust,
      () => 9 * crossing(fir4x4, flat),
      TRADE_FORUM,
    ),
    capacity(
      '4×4, 3 by 3, rounded as a whole (printed 55,000)',
      55_000,
      500,
      () => 9 * crossing(fir4x4, unrounded),
      RESCUE_SYSTEMS,
    ),
    capacity('6×6, 2 by 2', 60_000, dust, () => 4 * crossing(fir6x6, flat), PUBLIC_PAGE),
    capacity('4×4, one contact', 6000, dust, () => crossing(fir4x4, flat), TRADE_ARTICLE),
    capacity('6×6, one contact', 15_000, dust, () => crossing(fir6x6, flat), TRADE_ARTICLE),
    capacity(
      '6×6, 3 by 3 (printed 136,000)',
      136_000,
      500,
      () => 9 * crossing(fir6x6, unrounded),
      memory('US Army Corps of Engineers Shoring Operations Guide, section 2'),
    ),
    capacity(
      '8×8, 2 by 2, 7.5 in (printed 112,000)',
      112_000,
      // 112,500 lb, printed to whole thousands.
      500 + dust,
      () => 4 * crossing(eightByEight(7.5), unrounded),
      memory('US Army Corps of Engineers Shoring Operations Guide, section 2'),
    ),
    capacity(
      '8×8, 2 by 2, 7.25 in dry',
      105_125,
      1e-6,
      () => 4 * crossing(eightByEight(7.25), unrounded),
      closedForm('4 × 7.25² in² × 500 psi'),
    ),
    sized('4×4', fir4x4, 12.25, SECTIONS),
    sized('6×6', fir6x6, 30.25, SECTIONS),
    sized('8×8, green', eightByEight(7.5), 56.25, SECTIONS),
    sized('8×8, dry', eightByEight(7.25), 52.56, PS20),
    factor(0.5, 1.75, 0.005, NDS_TABLE),
    factor(1, 1.38, 0.0051, NDS_TABLE),
    factor(1.5, 1.25, 0.005, NDS_TABLE),
    factor(2, 1.19, 0.005, NDS_TABLE),
    factor(3, 1.13, 0.0051, NDS_TABLE),
    factor(4, 1.1, 0.0075, NDS_TABLE),
    factor(6, 1, 0, NDS_TABLE),
    factor(3.5, 3.875 / 3.5, 1e-9, NDS_HELP),
    {
      what: 'Cb, 3.5 in bearing nearer than 3 in to the end',
      source: NDS_HELP,
      expected: 1,
      within: 0,
      unit: '',
      computed: () => bearingLengthFactor(3.5 * inch, 2.9 * inch),
    },
    {
      what: 'wet service factor perpendicular to grain',
      source: NDS_CODE,
      expected: 0.67,
      within: 0,
      unit: '',
      computed: () => wetServiceFactor(true),
    },
    {
      what: 'stress perpendicular to grain, 625 psi, 1.5 in bearing',
      source: published('Public worked example of NDS 3.10', 'bearing of 1.5 in'),
      expected: 781.25,
      within: 0.005,
      unit: 'psi',
      computed: () => species(625, false, 1.5),
    },
    {
      what: 'stress perpendicular to grain, wet Douglas fir-larch, no Cb',
      source: closedForm('625 psi × 0.67'),
      expected: 418.75,
      within: 1e-9,
      unit: 'psi',
      computed: () => species(625, true, 3.5, 2),
    },
    {
      what: 'stress perpendicular to grain, hem-fir 4×4',
      source: closedForm('405 psi × 3.875/3.5: below the flat 500 psi'),
      expected: 448.39,
      within: 0.005,
      unit: 'psi',
      computed: () => species(405, false),
    },
    {
      what: 'stress perpendicular to grain, wet spruce-pine-fir, no Cb',
      source: closedForm('425 psi × 0.67: below the flat 500 psi'),
      expected: 284.75,
      within: 1e-9,
      unit: 'psi',
      computed: () => species(425, true, 3.5, 2),
    },
  ],
};
