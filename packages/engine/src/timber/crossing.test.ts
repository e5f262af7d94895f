import { calculationOf } from '@cribwright/messages/testing';
import { shippedPolicy } from '@cribwright/model';
import { fir4x4, fir6x6, inch, lb, policyWith, psi } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { crossingCapacity, crossingStress } from './crossing.js';

const overhang = 4 * inch;
const pounds = (timber: typeof fir4x4, policy = shippedPolicy) =>
  (crossingCapacity({ timber, overhang }, policy).value?.low ?? Number.NaN) / lb;
const stress = (timber: typeof fir4x4, policy = shippedPolicy, end = overhang) =>
  (crossingStress(timber, end, policy).value?.low ?? Number.NaN) / psi;
const species = policyWith('crossing basis', 'species');
const flat = policyWith('crossing basis', 'flat rule');

describe('capacity of a crossing', () => {
  // Fire-service trade magazine, rule of thumb by contact: 4×4 6,000 lb, 6×6 15,000 lb.
  it.each([
    ['4x4', fir4x4, 6000],
    ['6x6', fir6x6, 15_000],
  ])('%s holds %3$i lb', (_name, timber, expected) => expect(pounds(timber)).toBeCloseTo(expected, 6));

  it('shows the sum', () => {
    const figure = crossingCapacity({ timber: fir4x4, overhang }, shippedPolicy);
    expect(calculationOf(figure)?.numbers).toBe(
      '500 psi × 12.25 in2, rounded down to a multiple of 1,000 lb',
    );
    expect(figure.rounding).toBe('down');
  });

  it('does not lose a step where the product is a whole multiple', () =>
    expect(pounds(fir4x4, policyWith('crossing rounding', 6125 * lb))).toBeCloseTo(6125, 6));
});

describe('stress allowed perpendicular to grain', () => {
  // NDS Supplement 2018, Table 4A: Douglas fir-larch 625 psi, Hem-fir 405 psi; NDS 3.10.4: Cb of 3.5 in = 1.1071.
  const hemFir = { ...fir4x4, species: 'Hem-fir', perpendicularToGrain: 405 * psi };
  it('takes the flat rule where the species has more', () => expect(stress(fir4x4)).toBeCloseTo(500, 6));
  it('takes the species where it has less', () => expect(stress(hemFir)).toBeCloseTo(405 * (3.875 / 3.5), 6));
  it('takes the flat rule alone if the policy says so', () =>
    expect(stress(hemFir, flat)).toBeCloseTo(500, 6));
  it('takes the species alone if the policy says so', () =>
    expect(stress(fir4x4, species)).toBeCloseTo(625 * 1.107143, 3));
  it('grants no bearing length nearer than 3 in to the end', () =>
    expect(stress(fir4x4, species, 2.9 * inch)).toBeCloseTo(625, 6));
  // NDS Supplement 2018, Table 4A: wet service factor 0.67 perpendicular to grain: 625 × 0.67 = 418.75 psi.
  it('takes wet timber down', () =>
    expect(stress({ ...fir4x4, wet: true }, species, 0)).toBeCloseTo(418.75, 6));
});
