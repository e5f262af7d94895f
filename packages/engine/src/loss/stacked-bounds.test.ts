import { trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { shareBounds } from './reaction-bounds.js';
import { stackedBounds } from './stacked-bounds.js';

describe('bounds by statics where vehicle rests on vehicle', () => {
  it.each([trailerOnCar, truckOnCar])('cover every load that was worked out', (plan) => {
    const w = workingsOf(plan);
    const [part] = w.resting().parts;
    if (part === undefined) throw new Error('It rests on nothing.');
    const bounds = stackedBounds(part.component);
    expect(bounds.size).toBe(part.component.points.length);
    for (const [id, most] of bounds) {
      const strut = id.startsWith('strut/');
      const load = w.loads().get(id)?.load;
      const upward = strut ? load?.inputs.find((f) => f.key === 'load') : load;
      expect(upward?.value?.high ?? 0).toBeLessThanOrEqual(most * (1 + 1e-6) + 1e-6);
    }
  });

  it('agree with the levers of a vehicle that nothing rests on', () => {
    const [part] = workingsOf(truckOnCar).resting().parts;
    if (part === undefined) throw new Error('It rests on nothing.');
    const { bodies, points } = part.component;
    const truck = bodies.find((b) => b.vehicle === 'vehicle/truck');
    const own = points.filter((p) => p.upper === truck?.id);
    const bounds = stackedBounds(part.component);
    const heaviest = Math.max(...(truck?.corners.map((c) => c.weight) ?? []));
    own.forEach((p, i) => {
      const share = shareBounds(
        own.map((o) => o.at),
        i,
        truck?.corners ?? [],
      );
      // The lever takes weight and place as free of each other; here they go together, corner by corner.
      expect(bounds.get(p.id)).toBeLessThanOrEqual((share?.most ?? 0) * heaviest * (1 + 1e-6));
      expect(bounds.get(p.id)).toBeGreaterThan(0.8 * (share?.most ?? 0) * heaviest);
    });
  });
});
