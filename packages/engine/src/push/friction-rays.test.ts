import { describe, expect, it } from 'vitest';
import { frictionRays, raysAgainst } from './friction-rays.js';

const along = { x: -1, y: 0, z: 0 };
const rays = raysAgainst({ x: Math.cos(0.3), y: Math.sin(0.3), z: 0 });
const rolling = (heldForward: boolean, heldBack: boolean) =>
  frictionRays({ friction: 0.5, rolls: { along, heldForward, heldBack } }, rays);

describe('frictionRays', () => {
  it('reaches as far as the friction goes, the first straight against the push', () => {
    const [first, ...rest] = frictionRays({ friction: 0.5 }, rays);
    expect(first?.x).toBeCloseTo(0.5 * Math.cos(0.3), 12);
    expect(first?.y).toBeCloseTo(0.5 * Math.sin(0.3), 12);
    for (const r of rest) expect(Math.hypot(r.x, r.y)).toBeCloseTo(0.5, 12);
  });

  it('leaves a wheel that may roll both ways only the two ends of what it resists across', () => {
    const widest = Math.max(...rays.map((r) => 0.5 * Math.abs(r.y)));
    const kept = rolling(false, false);
    expect(kept).toHaveLength(2);
    for (const r of kept) expect(r.x).toBeCloseTo(0, 12);
    expect(Math.min(...kept.map((r) => r.y))).toBeCloseTo(-widest, 12);
    expect(Math.max(...kept.map((r) => r.y))).toBeCloseTo(widest, 12);
  });

  it('leaves a wheel chocked one way only the forces that this chock can give', () => {
    const kept = rolling(true, false);
    // Kept from rolling forward, toward −x: what pushes it back along +x.
    expect(kept.filter((r) => r.x > 1e-9)).toHaveLength(rays.filter((r) => r.x > 1e-9).length);
    expect(Math.min(...kept.map((r) => r.x))).toBeGreaterThanOrEqual(-1e-12);
  });

  it('leaves a wheel that is chocked in both directions all of it', () => {
    expect(rolling(true, true)).toHaveLength(8);
  });

  it('leaves a contact without friction the force straight up', () => {
    expect(frictionRays({ friction: 0 }, rays)).toEqual([{ x: 0, y: 0, z: 1 }]);
  });
});
