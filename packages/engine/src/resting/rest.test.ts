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

describe('a stiff contact on bodies that sink far', () => {
  /** Tires of 10 N/m and cab mounts of up to a billion: the truck sinks hundreds of meters, the mounts close by a hair. */
  const cabOn = (mounts: number, by: number): RestingSystem => ({
    bodies: [
      { id: 'truck', weight: 44_000 * by, x: 3.1, y: 0.07 },
      { id: 'cab', weight: 17_800 * by, x: 2.9, y: 0.01 },
    ],
    springs: [
      ...[0, 6].flatMap((x) => [-1, 1].map((y) => spring(`tire ${x} ${y}`, x, y, 10))),
      ...[1.7, 3.8].flatMap((x) =>
        [-0.4, 0.4].map((y) => spring(`mount ${x} ${y}`, x, y, mounts, { upper: 'cab', lower: 'truck' })),
      ),
    ],
  });
  const within = (forces: Float64Array, list: readonly Spring[], id: string, of: (s: Spring) => number) =>
    list.reduce(
      (sum, s, i) =>
        sum + ((s.upper === id ? 1 : 0) - (s.lower === id ? 1 : 0)) * (forces[i] ?? Number.NaN) * of(s),
      0,
    );

  it.each([1e6, 1e7, 1e8, 1e9])('balances to twelve digits, with mounts of %d N/m', (mounts) => {
    const system = cabOn(mounts, 1);
    const { forces } = resting(rest(system));
    for (const { id, weight, x, y } of system.bodies) {
      const left = [
        within(forces, system.springs, id, () => 1) - weight,
        within(forces, system.springs, id, (s) => s.x) - weight * x,
        within(forces, system.springs, id, (s) => s.y) - weight * y,
      ].map(Math.abs);
      expect(Math.max(...left)).toBeLessThan(1e-12 * 61_800 * 6);
    }
    // Pile-group formula (see above) for the four mounts, which stand about x = 2.75 m and y = 0.
    for (const [i, { x, y }] of system.springs.slice(4).entries())
      expect((forces[4 + i] ?? Number.NaN) / 17_800).toBeCloseTo(
        1 / 4 + (0.15 * (x - 2.75)) / (4 * 1.05 ** 2) + (0.01 * y) / (4 * 0.4 ** 2),
        5,
      );
  });

  it('does not hang on the last digit of the weight', () => {
    for (const mounts of [1e6, 1e7, 1e8, 1e9]) {
      const { forces } = resting(rest(cabOn(mounts, 1)));
      for (let n = 1; n <= 40; n++) {
        const other = rest(cabOn(mounts, 1 + n * 4e-15));
        expect([mounts, n, other.kind]).toEqual([mounts, n, 'rests']);
        for (const [i, f] of resting(other).forces.entries())
          expect(Math.abs(f - (forces[i] ?? Number.NaN))).toBeLessThan(1e-5 * 61_800);
      }
    }
  });
});

describe('a contact between two parts of one body', () => {
  const own = (x: number, y: number) => spring(`own ${x} ${y}`, x, y, 1e8, { lower: 'truck' });
  const inside = [own(-3, -1), own(-3, 1), own(7, 0)];

  it('holds nothing up: the body falls, or only balances, as without it', () => {
    const line = [spring('a', 0, 0), spring('b', 4, 0)];
    expect(resting(rest(truck(1000, 1, 0, [...line, ...inside]))).balanced).toBe(true);
    expect(rest(truck(1000, 1, 0.5, [...line, ...inside])).kind).toBe('falls');
    expect(rest(truck(1000, 5, 0, [...line, spring('c', 0, 1), ...inside])).kind).toBe('falls');
    expect(rest(truck(1000, 1, 0, inside)).kind).toBe('falls');
  });

  it('carries what it was wedged with, and changes no other force', () => {
    const four = [spring('a', 0, -1), spring('b', 0, 1), spring('c', 4, -1), spring('d', 4, 1)];
    const wedged = [...four.map(() => undefined), { preload: 200, closing: 0 }];
    const { forces } = resting(rest(truck(1000, 1, 0, [...four, own(7, 0)]), wedged));
    // Levers: weight × (4 − 1) ÷ 4 at the front, the rest at the rear, half on each side.
    for (const [i, f] of [375, 375, 125, 125, 200].entries()) expect(forces[i]).toBeCloseTo(f, 9);
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
