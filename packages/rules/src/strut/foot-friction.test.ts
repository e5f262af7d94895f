import { workingsOf } from '@cribwright/engine';
import { footFriction, leastFootFriction, tieUse } from '@cribwright/engine/internal';
import { calculationOf } from '@cribwright/messages/testing';
import type { Ground, Pad } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import { asphalt, fir4x4, planOf, policyWith, strut, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

const surface = (tire: number, timber: number, body?: number): Ground => ({
  ...asphalt,
  surface: {
    ...asphalt.surface,
    frictionTire: exactly(tire),
    frictionTimber: exactly(timber),
    frictionBody: body === undefined ? undefined : exactly(body),
  },
});
/** Ice: rubber, timber and metal all slide on it. From memory. */
const ice = surface(0.1, 0.05, 0.03);
const pad = (material?: Pad['material']): Pad => ({
  kind: 'pad',
  id: 'pad/P1',
  name: 'P1',
  length: 1,
  width: 1,
  thickness: 0.1,
  ...(material === undefined ? {} : { material }),
  under: 'strut/S1',
  ref: { element: 'pad/P1' },
});
const s1 = strut('S1', 5, -1.2, -2);
const post = {
  ...s1,
  gear: { kind: 'timber post', name: 'p', timber: fir4x4, plies: 1, ref: s1.ref },
} as const;
const on = (ground: Ground, of: typeof s1 = s1, pads: readonly Pad[] = []) =>
  footFriction(of, planOf({ ground, struts: [of], pads })).value?.low;

describe('friction under the foot of a strut', () => {
  it('is that of the base plate where the surface grips better', () => expect(on(asphalt)).toBe(0.3));

  it('is the least that a slippery surface gives', () => {
    expect(on(ice)).toBe(0.03);
    expect(on(surface(0.1, 0.05))).toBe(0.05);
    expect(on(surface(0.1, 0.2))).toBe(0.1);
  });

  it('is that of timber on the surface under a post, and under a pad of timber or plywood', () => {
    expect(on(ice, post)).toBe(0.05);
    expect(on(ice, s1, [pad('timber')])).toBe(0.05);
    expect(on(ice, s1, [pad('plywood')])).toBe(0.05);
  });

  it('is no better under a pad of steel or of a material that nobody stated', () => {
    expect(on(ice, s1, [pad('steel')])).toBe(0.03);
    expect(on(ice, s1, [pad()])).toBe(0.03);
  });

  it('is never above the policy, and says where it is from', () => {
    const plan = planOf({ struts: [s1], policy: policyWith('friction strut base', 0.2) });
    expect(footFriction(s1, plan).value?.low).toBe(0.2);
    expect(leastFootFriction(s1, plan)).toBe(0.2);
    expect(calculationOf(footFriction(s1, { ...plan, ground: ice }))?.numbers).toBe('lesser of 0.2 and 0.03');
  });
});

describe('struts on ice', () => {
  // The thrust of a strut at angle θ with load S that friction does not hold is S (cos θ − μ sin θ): statics of the foot.
  // With head 40 in up and foot 38 in out, cos = 0.6887 and sin = 0.7250: friction 0.3 leaves 0.4712 S, 0.03 leaves 0.6670 S.
  it('pull harder on the strap that ties them', () => {
    const pull = (ground: Ground) => {
      const w = workingsOf({ ...trailerOnCar, ground });
      return w.ties().map((t) => tieUse(t, w).load.value?.high ?? Number.NaN)[0] ?? Number.NaN;
    };
    expect(pull(ice) / pull(asphalt)).toBeCloseTo(0.667 / 0.4712, 2);
  });

  it('slide where only friction holds a steep one', () => {
    const policy = policyWith('friction strut base', 0.95);
    const loose = { ...trailerOnCar, ties: [], policy };
    const slips = (ground: Ground) =>
      analyze({ ...loose, ground }).findings.filter((f) => f.rule === 'strut-slip').length;
    expect(slips(surface(0.95, 0.95))).toBe(0);
    expect(slips(ice)).toBe(4);
    expect(slips(surface(0.95, 0.94))).toBe(4);
  });
});
