import type { Pad, Tie } from '@cribwright/model';
import { exactly, place } from '@cribwright/model';
import { foot, planOf, policyWith, strap, strut, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { gripOn, tieWorking } from './tie-working.js';

// Statics of the base, by hand: axial load 1 at 45°, friction 0.3, so 0.7071 − 0.3 × 0.7071 = 0.4950 is left over. A
// strap that rises 3 in 5 pulls with 4/5 inward and lifts with 3/5, which takes 0.3 × 3/5 from the friction:
// T = 0.4950 ÷ (0.8 − 0.18) = 0.7984. At the base then 0.7071 − 0.8 T = 0.0684 = 0.3 × (0.7071 − 0.6 T).
it('counts a rising strap for what it holds of the thrust and for what it lifts', () => {
  const s1 = strut('S1', 10 * foot, 4 * foot, 8 * foot, {
    head: { ...strut('S1', 0, 0, 0).head, x: 10 * foot, y: 4 * foot, z: exactly(4 * foot) },
  });
  const plan = planOf({
    vehicles: [vanTrailer],
    struts: [s1],
    policy: policyWith('friction strut base', 0.3),
  });
  const to = { kind: 'vehicle part', vehicle: vanTrailer.id, part: 'rail' } as const;
  const level = { ...strap('T1', 'S1', 'S1'), to: { ...to, x: 10 * foot, y: 0, z: 0 } };
  const rising = { ...level, to: { ...to, x: 10 * foot, y: 0, z: 6 * foot } };
  expect(gripOn(level, s1, plan)).toBeCloseTo(1, 12);
  const grip = gripOn(rising, s1, plan);
  expect(grip).toBeCloseTo(0.8 - 0.3 * 0.6, 12);
  const pull = (Math.SQRT1_2 - 0.3 * Math.SQRT1_2) / grip;
  expect(Math.SQRT1_2 - 0.8 * pull).toBeCloseTo(0.3 * (Math.SQRT1_2 - 0.6 * pull), 12);
});

// 3-4-12 and 13: the box with whole edges and a whole diagonal.
it('is as long as the straight line between its ends, in all three directions', () => {
  const s1 = strut('S1', 10 * foot, 2 * foot, 4 * foot);
  const pad: Pad = {
    kind: 'pad',
    id: 'pad/P1',
    name: 'P1',
    length: 2 * foot,
    width: 2 * foot,
    thickness: foot,
    under: s1.id,
    ref: { element: 'pad/P1' },
  };
  const plan = planOf({ vehicles: [vanTrailer], struts: [s1], pads: [pad] });
  const to = {
    kind: 'vehicle part',
    vehicle: vanTrailer.id,
    part: 'rail',
    x: 13 * foot,
    y: 8 * foot,
    // The foot stands 1 ft up, on its pad.
    z: 13 * foot,
  } as const;
  const tie = { ...strap('T1', 'S1', 'S1'), to };
  const long = (t: Tie) => place({ ...plan, ties: [t] }).ties.all.map(tieWorking)[0]?.length;
  expect((long(tie)?.value?.high ?? 0) / foot).toBeCloseTo(13, 9);
  expect((long({ ...tie, from: to, to: tie.from })?.value?.high ?? 0) / foot).toBeCloseTo(13, 9);
});
