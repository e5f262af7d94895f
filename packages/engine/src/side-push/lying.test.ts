import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { crib, foot, inch, planOf, strap, strut, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { pushRose } from './push-rose.js';

/** A trailer on its driver side, on ground of which the friction of its body is known. */
const lying = (change: Partial<Plan>, grip = 0.2): Plan => {
  const plan = planOf({
    vehicles: [{ ...vanTrailer, position: { kind: 'on its side', side: 'driver' } }],
    ...change,
  });
  const surface = { ...plan.ground.surface, frictionBody: { low: grip, high: grip } };
  return { ...plan, ground: { ...plan.ground, grade: 0, surface } };
};

const shares = (plan: Plan): readonly number[] => {
  const rose = pushRose(workingsOf(plan));
  return 'why' in rose ? [] : rose.directions.map((d) => d.share.value?.low ?? Number.NaN);
};

describe('a vehicle that lies, pushed', () => {
  it('slides at the friction of its body, in every direction', () => {
    const all = shares(lying({}));
    expect(all).toHaveLength(24);
    for (const share of all) expect(share).toBeCloseTo(0.2, 9);
  });

  it('borrows no grip from cribs or struts beside it: no load moves there by itself', () => {
    const beside = {
      cribs: [crib('A', 15 * foot, 30 * inch), crib('B', 35 * foot, 30 * inch)],
      struts: [
        strut('S1', 20 * foot, 60 * inch, 100 * inch),
        strut('S2', 20 * foot, -60 * inch, -100 * inch),
      ],
      ties: [strap('T1', 'S1', 'S2')],
    };
    const all = shares(lying(beside));
    expect(all).toHaveLength(24);
    for (const share of all) expect(share).toBeLessThanOrEqual(0.2 + 1e-9);
  });

  it('loses a corner of its body among the cases', () => {
    const { parts } = workingsOf(lying({})).resting();
    const titles = parts.flatMap((p) => p.stages.at(-1)?.losses.map((l) => english(l.loss?.title)) ?? []);
    expect(titles).toContain('trailer on the ground, front driver corner gives way');
    expect(titles).toHaveLength(4);
  });
});
