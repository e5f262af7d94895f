import { describe, expect, it } from 'vitest';
import { given } from '../figure/compute.js';
import { length } from '../figure/units-of.js';
import { between, exactly, type Interval } from '../model/interval.js';
import { fir4x4, inch, lb, psi } from '../testing/sample-plans.js';
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
  given(length('us', 'length', 'length', 'nearest'), value, { kind: 'stated' });
const pounds = (p: Post, value: Interval | undefined) =>
  (postFigures(p, at(value), 'us').capacity.value?.low ?? 0) / lb;

describe('a timber post', () => {
  it('carries what the HUD example allows: 579.03 psi on 12.25 in²', () => {
    expect(pounds(post(), exactly(87.6 * inch))).toBeCloseTo(579.03 * 12.25, 0);
  });

  it('counts the longest end of a range, and says so', () => {
    const { capacity } = postFigures(post(), at(between(60 * inch, 87.6 * inch)), 'us');
    expect((capacity.value?.low ?? 0) / lb).toBeCloseTo(579.03 * 12.25, 0);
    expect(capacity.governs).toBe('the longest it may be');
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
    const { capacity } = postFigures(post({ plies: 3 }), at(exactly(87.6 * inch)), 'us');
    const stability = capacity.inputs.find((f) => f.key === 'stability');
    expect(stability?.formula?.names).toBe(
      'lesser of what buckling leaves (Cp) across its plies and what buckling leaves (Cp) along its plies',
    );
    const [across, along] = stability?.inputs ?? [];
    expect(across?.formula?.numbers.startsWith('0.6 × (')).toBe(true);
    // 3.5 in along the plies alone: as the solid post, whose Cp is that of the HUD example.
    expect(along?.value?.low).toBeCloseTo(579.03 / (1150 * 1.15), 4);
    expect(stability?.value?.low).toBe(Math.min(across?.value?.low ?? 1, along?.value?.low ?? 1));
  });

  it('is weaker wet, never stronger', () => {
    const dry = pounds(post(), exactly(87.6 * inch));
    const wet = pounds(post({ timber: { ...spf, wet: true } }), exactly(87.6 * inch));
    expect(wet).toBeLessThan(dry);
    expect(wet).toBeGreaterThan(dry * 0.75);
  });

  it('says that it does not know where the length is not known', () => {
    const figures = postFigures(post(), at(undefined), 'us');
    expect(figures.capacity.value).toBeUndefined();
    expect(figures.slenderness.value).toBeUndefined();
  });
});
