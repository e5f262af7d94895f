import { edgeFactor, effectiveShare, padSpread, partBearing } from '@cribwright/engine/internal';
import { name } from '@cribwright/messages';
import { exactly, given, type Pad } from '@cribwright/model';
import { pressure } from '@cribwright/model/internal';
import { crib, inch, lb, policyWith, psf, vanTrailer } from '@cribwright/model/testing';
import type { Check, Subject } from './check.js';
import { closedForm, memory } from './sources.js';

const MEYERHOF = memory('Meyerhof (1953); NAVFAC DM-7.02, chapter 4: effective width B − 2e, e = M ÷ P');
const CLAY = 1500;

/** A strip 6 ft wide and 1 ft long under 12 kip, off its middle by so many feet. */
const strip = (off: number) => ({ x: off, y: 0, length: 6, width: 1 });
const mean = 12_000 / 6;

const pressureOf = (what: string, expected: number, computed: () => number, source = MEYERHOF): Check => ({
  what,
  source,
  expected,
  within: 0.5,
  unit: 'psf',
  computed,
});

const steel = (thickness: number): Pad => ({
  kind: 'pad',
  id: 'pad/P1',
  name: 'P1',
  length: 240 * inch,
  width: 240 * inch,
  thickness: thickness * inch,
  material: 'steel',
  under: 'strut/S1',
  ref: { element: 'pad/P1' },
});
const bearing = given(pressure('allowable', name('clay'), 'down'), exactly(CLAY * psf), { kind: 'stated' });
const side = (thickness: number): number =>
  (padSpread(steel(thickness), { lengthwise: 12 * inch, crosswise: 12 * inch }, bearing).long.value?.low ??
    Number.NaN) / inch;

const joists = vanTrailer.parts.find((p) => p.id === 'joists');

/** What a joist so wide bears on a dressed 4×4 of the sample crib. */
const joistBears = (width: number): number => {
  if (joists === undefined) return Number.NaN;
  const met = { part: { ...joists, width: width * inch }, vehicle: vanTrailer };
  return (
    (partBearing({ crib: crib('A', 0, 0) }, met, policyWith('crossing basis', 'flat rule'))?.value?.low ??
      Number.NaN) / lb
  );
};

export const subject: Subject = {
  subject: 'Bearing',
  checks: [
    pressureOf('Strip of 6 ft, 12 kip in its middle: pressure', 2000, () => mean / effectiveShare(strip(0))),
    pressureOf('The same 1 ft off: B′ = 4 ft', 3000, () => mean / effectiveShare(strip(1))),
    pressureOf('The same 2 ft off: B′ = 2 ft', 6000, () => mean / effectiveShare(strip(2))),
    pressureOf(
      'The same 1 ft off, the edge of the middle third: pressure at the edge',
      4000,
      () => mean * edgeFactor(strip(1)),
      closedForm('P ÷ A + M ÷ S, S = B² ÷ 6: 2,000 + 12,000 ÷ 6 psf'),
    ),
    pressureOf(
      'The same 2 ft off: pressure at the edge',
      8000,
      () => mean * edgeFactor(strip(2)),
      closedForm('a triangle of length 3 (B ÷ 2 − e) = 3 ft: 2 × 12,000 ÷ 3 psf'),
    ),
    {
      what: 'Steel plate of 1/2 in under a base of 12 in on clay of 1,500 psf: bending stress at the base, by M = q a² ÷ 2',
      source: memory('AISC Specification, 1989, F2.2: 0.75 Fy in bending of a plate, A36'),
      expected: 27_000,
      within: 1,
      unit: 'psi',
      computed: () => {
        const out = (side(0.5) - 12) / 2;
        return ((CLAY / 144) * out ** 2) / 2 / (0.5 ** 2 / 6);
      },
    },
    {
      what: 'Joist of 1/4 in on a dressed 4×4 at 500 psi: bearing on the area in contact',
      source: memory(
        'NDS 2018, 3.10.2: perpendicular to grain on the net area in contact, 0.25 × 3.5 in × 500 psi',
      ),
      expected: 437.5,
      within: 1e-6,
      unit: 'lb',
      computed: () => joistBears(0.25),
    },
  ],
};
