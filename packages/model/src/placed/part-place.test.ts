import { describe, expect, it } from 'vitest';
import { foot, inch, sedan, vanTrailer } from '../testing/sample-plans.js';
import { toPlan, toVehicle } from './frame.js';
import { partNamed, placeAt } from './part-place.js';

describe('places on a vehicle', () => {
  it('turns to plan axes and back', () => {
    const there = toPlan(sedan, { x: 3 * foot, y: 2 * foot });
    // The car stands crosswise with its rear to the driver side: 3 ft back from its front is 3 ft toward it.
    expect(there.x / foot).toBeCloseTo(27, 9);
    expect(there.y / foot).toBeCloseTo(-2, 9);
    const back = toVehicle(sedan, there);
    expect([back.x / foot, back.y / foot]).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
  });

  it('finds the nearest joist and how far off it is', () => {
    const joists = partNamed(vanTrailer, 'joists');
    if (joists === undefined) throw new Error('the sample has no joists');
    const place = placeAt(vanTrailer, joists, { x: 20 * foot + 5 * inch, y: 0 });
    // Joists every 12 in from 4 ft: the one at 20 ft is the 17th; its edge is 1.5 in from its middle.
    expect(place?.number).toBe(17);
    expect((place?.at.x ?? 0) / foot).toBeCloseTo(20, 9);
    expect((place?.off.x ?? 0) / inch).toBeCloseTo(-3.5, 9);
  });
});
