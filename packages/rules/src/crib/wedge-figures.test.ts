import { wedgeFigures } from '@cribwright/engine/internal';
import { calculationOf, value } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { crib, foot, inch, lb, planOf, policyWith, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

const plan = planOf({ vehicles: [vanTrailer] });
const driven = (preload: number, pairs = 4) =>
  crib('A', 19.5 * foot, 0, { wedges: { pairs, travel: between(0.5 * inch, 2 * inch), preload } });

it('gives snug wedges, or none, no figures', () => {
  expect(wedgeFigures(driven(0), plan)).toEqual([]);
  expect(wedgeFigures(driven(1000 * lb, 0), plan)).toEqual([]);
  expect(wedgeFigures(crib('A', 0, 0, { wedges: undefined }), plan)).toEqual([]);
});
it('says how steep a driven wedge may be, and what driving it takes', () => {
  const [slope, drive] = wedgeFigures(driven(4000 * lb), plan);
  // arctan 0.45 + arctan 0.3 = 24.23° + 16.70°; 1,000 lb × 0.75.
  expect(calculationOf(slope)?.numbers).toBe('arctan(0.45) + arctan(0.3)');
  expect((slope?.value?.low ?? 0) * (180 / Math.PI)).toBeCloseTo(40.927, 2);
  expect((drive?.value?.high ?? 0) / lb).toBeCloseTo(750, 6);
  expect(drive && value(drive)).toBe('750 lb');
  expect(calculationOf(drive)?.numbers).toBe('4,000 lb ÷ 4 × (0.45 + 0.3)');
});
it('takes the lesser grip where metal grips more than timber', () => {
  const policy = policyWith('friction timber on metal', 0.6);
  const [slope] = wedgeFigures(driven(4000 * lb), { ...plan, policy });
  expect(calculationOf(slope)?.numbers).toBe('arctan(0.45) + arctan(0.45)');
  expect(slope?.value?.low).toBeCloseTo(2 * Math.atan(0.45), 12);
});
it('stands among the figures of its crib', () => {
  const { supports } = analyze({ ...plan, cribs: [driven(4000 * lb)] });
  expect(Object.keys(supports[0]?.figures ?? {})).toEqual(
    expect.arrayContaining(['wedgeSlope', 'wedgeDrive']),
  );
});
