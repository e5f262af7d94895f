import { analyze } from '@cribwright/engine';
import { trailerOnCar as plan } from '@cribwright/engine/testing';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const { scene, group, words } = drawn(plan, analyze(plan), { view: 'side' });

it('stands everything on the ground line, as high as it is', () => {
  const { down } = scene.frame ?? { down: { origin: 0, scale: 1 } };
  const box = boundsOf(group('crib/A'));
  expect(box.bottom).toBeCloseTo(down.origin, 6);
  // 11 courses of 3.5 in and the wedges that close the gap to the rail at 40 in.
  expect((box.top - down.origin) / down.scale).toBeCloseTo(40 * 0.0254, 6);
});

it('names heights at the side and shared labels once', () => {
  expect(words()).toContain('13 ft 6 in: top of trailer');
  expect(words()).toContain('A, B');
  expect(words()).not.toContain('B');
});

it('draws what stands on the far side in broken lines', () => {
  const broken = (key: string) => group(key).items.every((i) => i.kind !== 'polygon' || i.dash === 'dashed');
  expect(broken('crib/B')).toBe(true);
  expect(broken('crib/A')).toBe(false);
});
