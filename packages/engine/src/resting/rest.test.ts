import { describe, expect, it } from 'vitest';
import { resting, spring, truck } from '../testing/one-body.js';
import { rest } from './rest.js';
import type { RestingSystem, Spring } from './system.js';

const forces = (system: RestingSystem) => [...resting(rest(system)).forces];

describe('closed forms', () => {
  // Rigid cap on equal springs: f = W/n + My·x/Σx² + Mx·y/Σy² (pile-group formula; from memory, any text on
  // foundations), as long as no contact would pull.
  it('agrees with the pile-group formula', () => {
    const places = [-4, -1, 2, 3].flatMap((x) => [-1.2, 0.3, 0.9].map((y) => ({ x, y })));
    const W = 178_000;
    const c = { x: 0.4, y: -0.06 };
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
      expect(got[i]).toBeCloseTo(W / places.length + (W * c.x * p.x) / sx + (W * c.y * p.y) / sy, 5);
  });

  it('lets go of the contact that would pull, and leaves statics of the three that remain', () => {
    const square = [spring('a', 0, 0), spring('b', 1, 0), spring('c', 0, 1), spring('d', 1, 1)];
    expect(forces(truck(1000, 0.1, 0.1, square)).map((f) => Math.round(f * 1e6) / 1e6)).toEqual([
      800, 100, 100, 0,
    ]);
  });

  // OpenStax University Physics, volume 1, section 12.2, painter on a scaffold: 40 kg plank of 6.0 m, 80 kg at 1.0 m
  // from the left, a 16.0 kg kit at 4.5 m; the wires carry 888.5 N and 444.3 N.
  it('agrees with the painter of a physics text', () => {
    const mass = 40 + 80 + 16;
    const x = (40 * 3 + 80 * 1 + 16 * 4.5) / mass;
    const got = forces(truck(mass * 9.8, x, 0, [spring('left', 0, 0), spring('right', 6, 0)]));
    expect(got[0]).toBeCloseTo(888.5, 0);
    expect(got[1]).toBeCloseTo(444.3, 0);
  });

  it('puts the upper body through the lower one', () => {
    const system: RestingSystem = {
      bodies: [
        { id: 'car', weight: 1000, x: 0, y: 0 },
        { id: 'truck', weight: 3000, x: 2, y: 0 },
      ],
      springs: [
        ...[-1, 1].flatMap((x) => [-1, 1].map((y) => spring(`c${x}${y}`, x, y, 1e5, { upper: 'car' }))),
        spring('on car', 0, 0, 1e5, { lower: 'car' }),
        spring('rear left', 4, -1),
        spring('rear right', 4, 1),
      ],
    };
    const got = forces(system);
    expect(got[4]).toBeCloseTo(1500, 6);
    expect(got.slice(0, 4).map((f) => Math.round(f * 1e6) / 1e6)).toEqual([625, 625, 625, 625]);
  });
});

describe('what cannot rest', () => {
  it('gives no numbers, and says which way it goes', () => {
    const r = rest(
      truck(1000, -1, 0, [spring('a', 0, -1), spring('b', 3, -1), spring('c', 0, 1), spring('d', 3, 1)]),
    );
    expect(r.kind).toBe('falls');
    const [motion] = r.kind === 'falls' ? r.motions : [];
    // The front sinks: the slope falls toward x = 0 and below.
    expect(motion?.alongX).toBeLessThan(0);
    expect(motion?.alongY).toBeCloseTo(0, 9);
  });

  it('falls without any contact', () => {
    expect(rest(truck(1000, 0, 0, [])).kind).toBe('falls');
  });

  it('falls when what holds it is lost, and not before', () => {
    const system = truck(1000, 1, 0, [spring('a', 0, -1), spring('b', 0, 1), spring('c', 3, 0)]);
    expect(rest(system).kind).toBe('rests');
    expect(rest(system, [], new Set(['c'])).kind).toBe('falls');
  });

  it('says of two supports in line, and of one at the center, that they only balance', () => {
    const two = resting(rest(truck(1000, 1, 0, [spring('a', 0, 0), spring('b', 4, 0)])));
    expect(two.balanced).toBe(true);
    expect([...two.forces].map(Math.round)).toEqual([750, 250]);
    expect(resting(rest(truck(1000, 1, 2, [spring('a', 1, 2)]))).balanced).toBe(true);
    expect(rest(truck(1000, 1, 0.001, [spring('a', 0, 0), spring('b', 4, 0)])).kind).toBe('falls');
  });

  it('does not call it balancing where a support stands at the center and others touch', () => {
    const four = [spring('m', 0, 0), spring('a', -1, -1), spring('b', 1, -1), spring('c', 0, 1)];
    expect(resting(rest(truck(1000, 0, 0, four))).balanced).toBe(false);
  });
});

describe('memory', () => {
  const ends = [spring('a', 0, -1), spring('b', 0, 1), spring('c', 8, -1), spring('d', 8, 1)];
  const crib = [...ends, spring('crib', 4, 0, 2e6)];
  const on = (list: readonly Spring[]) => truck(1000, 5, 0, list);
  const before = resting(rest(on(ends)));
  const placed = (preload: number) => [
    ...ends.map(() => undefined),
    { preload, closing: resting(rest(on(crib), [], new Set(['crib']))).closings[4] ?? 0 },
  ];

  it('gives a snug support nothing of what was carried before it', () => {
    const now = resting(rest(on(crib), placed(0)));
    expect(now.forces[4]).toBeCloseTo(0, 9);
    for (let i = 0; i < 4; i++) expect(now.forces[i]).toBeCloseTo(before.forces[i] ?? 0, 9);
  });

  it('lets it take what statics says once the front is gone', () => {
    const now = resting(
      rest(on([...crib, spring('side', 4, 0.5, 2e6)]), [...placed(0), placed(0)[4]], new Set(['a', 'b'])),
    );
    // Lever about the rear: what stands at 4 m carries weight × (8 − 5) ÷ (8 − 4).
    expect((now.forces[4] ?? 0) + (now.forces[5] ?? 0)).toBeCloseTo(750, 6);
    expect((now.forces[2] ?? 0) + (now.forces[3] ?? 0)).toBeCloseTo(250, 6);
  });

  it('lifts a little where a wedge is driven, and keeps the sum', () => {
    const now = resting(rest(on(crib), placed(200)));
    expect(now.forces[4]).toBeGreaterThan(0);
    expect(now.forces[4]).toBeLessThan(200);
    expect([...now.forces].reduce((s, f) => s + f, 0)).toBeCloseTo(1000, 6);
  });
});
