import type { Strut, StrutGear } from '@cribwright/model';
import { between } from '@cribwright/model';
import {
  fir4x4,
  foot,
  gripping,
  inch,
  lb,
  planOf,
  policyWith,
  strut,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { groundResults } from './ground-working.js';

const psf = lb / foot ** 2;
const post = (plies: number): StrutGear => ({
  kind: 'timber post',
  name: 'post',
  timber: fir4x4,
  plies,
  ref: { element: 'strut type/post' },
});

/** Head 24 to 60 in above the ground and foot 32 in beside it: 24-32-40 to 60-32-68, sin θ 0.6 to 15/17. */
const under = (change: Partial<Strut> = {}, bearing = 4000 * psf) => {
  const head = { ...strut('S1', 0, 0, 0).head, x: 20 * foot, y: 49 * inch };
  const plan = planOf({
    vehicles: [vanTrailer],
    ground: { ...gripping, surface: { ...gripping.surface, bearing } },
    struts: [
      strut('S1', 20 * foot, 49 * inch, 81 * inch, {
        head: { ...head, z: between(24 * inch, 60 * inch) },
        preload: 500 * lb,
        ...change,
      }),
    ],
    policy: policyWith('friction strut base', 2),
  });
  const w = workingsOf(plan);
  return { along: w.loads().get('strut/S1')?.load.value, ground: groundResults(w)[0] };
};

describe('the ground under the base of a strut', () => {
  it('takes the load along the strut times the sine of its steepest angle', () => {
    const { along, ground } = under();
    expect(along?.high).toBeGreaterThan(100 * lb);
    expect((ground?.load.value?.high ?? 0) / (along?.high ?? Number.NaN)).toBeCloseTo(15 / 17, 9);
  });

  // A dressed 4×4 is 3.5 in by 3.5 in (PS 20): 12.25 in², three of them 36.75 in².
  it('bears on the section of all plies of a post', () => {
    for (const [plies, area] of [
      [1, 12.25],
      [3, 36.75],
    ] as const) {
      const { ground } = under({ gear: post(plies) });
      expect((ground?.area.value?.low ?? 0) / inch ** 2).toBeCloseTo(area, 9);
      const pounds = (ground?.load.value?.high ?? Number.NaN) / lb;
      expect(pounds).toBeGreaterThan(100);
      expect((ground?.pressure.value?.high ?? 0) / psf).toBeCloseTo(pounds / (area / 144), 6);
    }
  });

  it('bears on the base of a rated strut, and says that it does not know one that is not stated', () => {
    expect((under().ground?.area.value?.low ?? 0) / inch ** 2).toBeCloseTo(144, 9);
    const gear = strut('S1', 0, 0, 0).gear;
    if (gear.kind !== 'rated strut') throw new Error('the sample strut is rated');
    const { footArea: _, ...unstated } = gear;
    const { ground } = under({ gear: unstated });
    expect(ground?.area.value).toBeUndefined();
    expect(ground?.pressure.value).toBeUndefined();
  });

  it('asks for a pad of the load over what the ground bears', () => {
    const { ground } = under({ gear: post(1) });
    const pounds = (ground?.load.value?.high ?? Number.NaN) / lb;
    expect(ground?.pressure.value?.high).toBeGreaterThan(4000 * psf);
    expect((ground?.padNeeded?.value?.high ?? 0) / foot ** 2).toBeCloseTo(pounds / 4000, 9);
  });

  it('asks for a pad from where the pressure is more than the ground bears', () => {
    const most = under().ground?.pressure.value?.high ?? Number.NaN;
    expect(under({}, 0.999 * most).ground?.padNeeded).toBeDefined();
    expect(under({}, 1.001 * most).ground?.padNeeded).toBeUndefined();
  });
});
