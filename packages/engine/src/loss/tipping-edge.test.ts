import { name, term } from '@cribwright/messages';
import { describe, expect, it } from 'vitest';
import type { PlanBody } from '../supports/plan-bodies.js';
import type { SupportPoint } from '../supports/support-points.js';
import { tippingEdge } from './tipping-edge.js';

/** Three wheels; the line from the first to the last runs slantwise. */
const wheels = [
  { x: 0, y: 0 },
  { x: 2, y: 0 },
  { x: 2, y: 2 },
].map(
  (at, i): SupportPoint => ({
    id: `wheel ${i}`,
    element: 'vehicle/body',
    label: term('element.driver-side'),
    kind: 'tire',
    original: true,
    group: `wheel ${i}`,
    at: { ...at, z: 0 },
    upper: 'vehicle/body',
    lower: 'ground',
    stiffness: 1e6,
    preload: 0,
    ref: { element: 'vehicle/body' },
  }),
);

const body = (x: number, y: number): PlanBody => ({
  id: 'vehicle/body',
  vehicle: 'vehicle/body',
  name: name('body'),
  corners: [{ weight: 1000, x, y, words: [] }],
  centerHeight: { low: 1, high: 1 },
});

describe('tippingEdge', () => {
  it('is the distance to the nearest line, over the height', () => {
    const found = tippingEdge(body(1.5, 0.5), wheels);
    expect(found?.share.value?.low).toBeCloseTo(0.5, 9);
  });

  it('is nothing, and still said, where rounding puts a center on the line a hair outside it', () => {
    for (const off of [-1e-15, 0, 1e-15, 1e-9]) {
      const share = tippingEdge(body(1, 1 + off), wheels)?.share.value;
      expect(share?.low).toBeGreaterThanOrEqual(0);
      expect(share?.high).toBeLessThan(1e-8);
    }
  });

  it('says nothing of a body that is not held at all: another check does', () => {
    expect(tippingEdge(body(1, 1.2), wheels)).toBeUndefined();
  });
});
