import { term } from '@cribwright/messages';
import { calculationOf, english } from '@cribwright/messages/testing';
import { between, exactly, given, type Interval } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { fir4x4, inch, lb, psi } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { type Post, postFigures } from './post-capacity.js';

// HUD Residential Structural Design Guide, 2nd edition (2017), example 5.6: 4×4 spruce-pine-fir No. 2, 7.3 ft,
// Fc 1150 psi × CF 1.15, Emin 510,000 psi.
const spf = { ...fir4x4, parallelToGrain: 1150 * 1.15 * psi, modulusMin: 510_000 * psi };
const post = (change: Partial<Post> = {}): Post => ({
  kind: 'timber post',
  name: 'post',
  timber: spf,
  plies: 1,
  ref: { element: 'strut type/post' },
  ...change,
});
const at = (value: Interval | undefined) =>
  given(length('length', term('figure.length'), 'nearest'), value, { kind: 'stated' });
const pounds = (p: Post, value: Interval | undefined) =>
  (postFigures(p, at(value)).capacity.value?.low ?? 0) / lb;

describe('a timber post', () => {
  it('carries what the HUD example allows: 579.03 psi on 12.25 in²', () => {
    expect(pounds(post(), exactly(87.6 * inch))).toBeCloseTo(579.03 * 12.25, 0);
  });

  it('counts the longest end of a range, and says so', () => {
    const { capacity } = postFigures(post(), at(between(60 * inch, 87.6 * inch)));
    expect((capacity.value?.low ?? 0) / lb).toBeCloseTo(579.03 * 12.25, 0);
    expect(english(capacity.governs)).toBe('the longest it may be');
  });

  it('counts nailed plies at 0.6 across the nails', () => {
    // Aghayere and Vigil, Structural Wood Design (2007), example 5.7: three 2×6, 12 ft: Cp 0.1679.
    const timber = {
      ...spf,
      width: 1.5 * inch,
      depth: 5.5 * inch,
      parallelToGrain: 1650 * psi,
      modulusMin: 620_000 * psi,
    };
    expect(pounds(post({ timber, plies: 3 }), exactly(144 * inch))).toBeCloseTo(0.167927 * 1650 * 24.75, 0);
  });

  it('prints a sum of nailed plies that comes out: the lesser of both ways of bending, 0.6 across the nails', () => {
    const { capacity } = postFigures(post({ plies: 3 }), at(exactly(87.6 * inch)));
    const stability = capacity.inputs.find((f) => f.key === 'stability');
    expect(calculationOf(stability)?.names).toBe(
      'lesser of column stability factor (Cp) across its plies and column stability factor (Cp) along its plies',
    );
    const [across, along] = stability?.inputs ?? [];
    expect(calculationOf(across)?.numbers.startsWith('0.6 × (')).toBe(true);
    // 3.5 in along the plies alone: as the solid post, whose Cp is that of the HUD example.
    expect(along?.value?.low).toBeCloseTo(579.03 / (1150 * 1.15), 4);
    expect(stability?.value?.low).toBe(Math.min(across?.value?.low ?? 1, along?.value?.low ?? 1));
  });

  // The HUD post again, wet, by hand from NDS 3.7.1 with CM 0.8 on Fc and 0.9 on Emin (NDS Supplement, wet service
  // factors of Table 4A, from memory): Fc* 1058 psi, FcE 0.822 × 459,000 ÷ 25.029² = 602.3 psi, Cp 0.48043, so
  // 508.30 psi on 12.25 in².
  it('counts wet lumber at 0.8 of its stress and 0.9 of its modulus', () => {
    const { capacity } = postFigures(post({ timber: { ...spf, wet: true } }), at(exactly(87.6 * inch)));
    expect((capacity.value?.low ?? 0) / lb).toBeCloseTo(6226.64, 1);
    const [, along, stability] = capacity.inputs;
    expect((along?.value?.low ?? 0) / psi).toBeCloseTo(1058, 6);
    expect((stability?.inputs.find((f) => f.key === 'modulusMin')?.value?.low ?? 0) / psi).toBeCloseTo(
      459_000,
      6,
    );
    expect(stability?.value?.low).toBeCloseTo(0.48043, 5);
  });

  // NDS 3.7.1.5 with c = 0.8 for sawn lumber: 2c is 1.6.
  it('prints the formula of the standard for what buckling leaves', () => {
    const { capacity } = postFigures(post(), at(exactly(87.6 * inch)));
    const stability = capacity.inputs.find((f) => f.key === 'stability');
    expect(calculationOf(stability)?.names).toMatch(
      /^\(1 \+ r\) ÷ 1\.6 − √\(\(\(1 \+ r\) ÷ 1\.6\)² − r ÷ 0\.8\),( where)? r = 0\.822 × /,
    );
  });

  it('is as slender as its longest length over the least depth of its section', () => {
    const timber = { ...spf, width: 5.5 * inch, depth: 3.5 * inch };
    const { slenderness, capacity } = postFigures(post({ timber }), at(between(70 * inch, 87.5 * inch)));
    expect(slenderness.value?.low).toBeCloseTo(70 / 3.5, 9);
    expect(slenderness.value?.high).toBeCloseTo(87.5 / 3.5, 9);
    // By hand, at 20 and at 25: FcE 1048.1 and 670.75 psi on 1322.5 psi, Cp 0.6060 and 0.4386, on 19.25 in².
    expect((capacity.value?.high ?? 0) / lb / (1322.5 * 19.25)).toBeCloseTo(0.606, 4);
    expect((capacity.value?.low ?? 0) / lb / (1322.5 * 19.25)).toBeCloseTo(0.4386, 4);
    expect(postFigures(post(), at(exactly(87.6 * inch))).capacity.governs).toBeUndefined();
  });

  it('says that it does not know where the length is not known', () => {
    const figures = postFigures(post(), at(undefined));
    expect(figures.capacity.value).toBeUndefined();
    expect(figures.slenderness.value).toBeUndefined();
  });
});
