import { describe, expect, it } from 'vitest';
import { rest } from './rest.js';
import type { RestingSystem, Spring } from './system.js';

const spring = (id: string, x: number, y: number, stiffness = 1e6, change: Partial<Spring> = {}): Spring => ({
  id,
  upper: 'truck',
  lower: 'ground',
  x,
  y,
  stiffness,
  ...change,
});
const truck = (weight: number, x: number, y: number, springs: readonly Spring[]): RestingSystem => ({
  bodies: [{ id: 'truck', weight, x, y }],
  springs,
});
const forces = (system: RestingSystem) => {
  const r = rest(system);
  if (r.kind !== 'rests') throw new Error(r.kind);
  return [...r.forces];
};

describe('closed forms', () => {
  // Rigid cap on equal springs: f = W/n + My·x/Σx² + Mx·y/Σy² (pile-group formula; from memory, any text on
  // foundations), as long as no contact would pull.
  it('agrees with the pile-group formula', () => {
    const places = [-4, -1, 2, 3].flatMap((x) => [-1.2, 0.3, 0.9].map((y) => ({ x, y })));
    const W = 178_000;
    const c = { x: 0.4, y: -0.06 };
    const n = places.length;
    const sx = places.reduce((s, p) => s + p.x ** 2, 0);
    const sy = places.reduce((s, p) => s + p.y ** 2, 0);
    const got = forces(
      truck(
        W,
        c.x,
        c.y,
        places.map((p, i) => spring(`s${i}`, p.x, p.y)),
      ),
    );
    for (const [i, p] of places.entries())
      expect(got[i]).toBeCloseTo(W / n + (W * c.x * p.x) / sx + (W * c.y * p.y) / sy, 5);
  });

  it('lets go of the contact that would pull, and leaves statics of the three that remain', () => {
    const square = [spring('a', 0, 0), spring('b', 1, 0), spring('c', 0, 1), spring('d', 1, 1)];
    const got = forces(truck(1000, 0.1, 0.1, square));
    expect(got[3]).toBe(0);
    expect(got[1]).toBeCloseTo(100, 9);
    expect(got[2]).toBeCloseTo(100, 9);
    expect(got[0]).toBeCloseTo(800, 9);
  });

  // OpenStax University Physics Vol 1, section 12.2, painter on a scaffold: 40 kg plank 6.0 m, 80 kg at 1.0 m from
  // the left end, kit at 4.5 m; left wire carries twice the right one: 888.5 N and 444.3 N, kit 16.0 kg.
  it('agrees with the painter of a physics text', () => {
    const kit = 16.0;
    const g = 9.8;
    const mass = 40 + 80 + kit;
    const x = (40 * 3 + 80 * 1 + kit * 4.5) / mass;
    const got = forces(truck(mass * g, x, 0, [spring('left', 0, 0), spring('right', 6, 0)]));
    expect(got[0]).toBeCloseTo(888.5, 0);
    expect(got[1]).toBeCloseTo(444.3, 0);
  });
});
