import { describe, expect, it } from 'vitest';
import type { Vector } from '../space/vectors.js';
import { heldPush, heldPushes } from './held-push.js';
import type { Push, PushContact, PushStrut, PushSystem, PushTie } from './push-system.js';

const down: Vector = { x: 0, y: 0, z: -1 };
const way = (angle: number): Vector => ({ x: Math.cos(angle), y: Math.sin(angle), z: 0 });
const toPassenger = way(Math.PI / 2);

/** A block on four corners, its center in its middle. */
const block = (
  size: { l: number; b: number; h: number },
  contact: Partial<PushContact> = {},
  more: Partial<PushSystem> = {},
): PushSystem => ({
  bodies: [{ id: 'block', weight: 1000, center: { x: 0, y: 0, z: size.h / 2 } }],
  contacts: [-1, 1].flatMap((i) =>
    [-1, 1].map(
      (j): PushContact => ({
        id: `${i},${j}`,
        upper: 'block',
        lower: 'ground',
        at: { x: (i * size.l) / 2, y: (j * size.b) / 2, z: 0 },
        friction: 0.5,
        ...contact,
      }),
    ),
  ),
  stacks: [],
  struts: [],
  ties: [],
  loads: [],
  gravity: down,
  ...more,
});
const pushAt = (z: number, direction: Vector): Push => ({ body: 'block', at: { x: 0, y: 0, z }, direction });

const held = (system: PushSystem, push: Push) => {
  const found = heldPush(system, push);
  if (found.kind !== 'holds') throw new Error(found.kind);
  expect(found.proven).toBe(true);
  expect(found.residual).toBeLessThan(1e-9);
  return found;
};

const low = { l: 4, b: 2, h: 1 };
const tall = { l: 4, b: 2, h: 6 };
const strut = (id: string, side: 1 | -1, change: Partial<PushStrut> = {}): PushStrut => ({
  id,
  body: 'block',
  head: { x: 0, y: side, z: 2 },
  foot: { x: 0, y: 3 * side, z: 0 },
  footFriction: 0.3,
  capacity: 5000,
  ...change,
});
/** From a strut's base back to the bottom of the block. */
const back = (of: string, side: 1 | -1, rating = 5000): PushTie => ({
  id: `tie of ${of}`,
  from: { kind: 'foot', strut: of },
  to: { kind: 'body', body: 'block', at: { x: 0, y: side, z: 0 } },
  rating,
});

describe('slip or tip', () => {
  // Slides at μ W, tips at W b / 2h, whichever is less: the two-case method of Baker & Haynes, Engineering Statics,
  // chapter 9.
  it.each([0.1, 0.3, 0.49, 0.51, 0.8])('holds the lesser of the two with friction %f', (friction) => {
    const size = { l: 3, b: 1, h: 2 };
    for (const [angle, width] of [
      [0, 3],
      [Math.PI / 2, 1],
      [Math.PI, 3],
      [-Math.PI / 2, 1],
    ] as const) {
      const found = held(block(size, { friction }), pushAt(1, way(angle)));
      expect(found.share).toBeCloseTo(Math.min(friction, width / 2 / 1), 9);
      expect(found.gives?.kind).toBe(friction < width / 2 ? 'slides' : 'tips');
    }
  });

  it('slides at μ W in each of 24 directions', () => {
    for (let i = 0; i < 24; i++)
      expect(held(block(low, { friction: 0.37 }), pushAt(0.1, way((i * Math.PI) / 12))).share).toBeCloseTo(
        0.37,
        9,
      );
  });

  // OpenStax University Physics, volume 1, section 6.2: on an incline W sin θ pulls and μ W cos θ holds.
  it('loses down a grade what it gains up it', () => {
    const angle = Math.atan(0.1);
    const gravity = { x: Math.sin(angle), y: 0, z: -Math.cos(angle) };
    const onGrade = block(low, {}, { gravity });
    expect(held(onGrade, pushAt(0, way(0))).share).toBeCloseTo(0.5 * Math.cos(angle) - Math.sin(angle), 9);
    expect(held(onGrade, pushAt(0, way(Math.PI))).share).toBeCloseTo(
      0.5 * Math.cos(angle) + Math.sin(angle),
      9,
    );
  });

  it('holds nothing on a grade steeper than its friction, and proves it', () => {
    const gravity = { x: 0.6, y: 0, z: -0.8 };
    expect(heldPush(block(low, {}, { gravity }), pushAt(0, way(0)))).toEqual({ kind: 'cannot stand' });
  });

  it('counts a tool load', () => {
    const shoved = block(
      low,
      {},
      { loads: [{ body: 'block', at: { x: 0, y: 0, z: 0 }, force: { x: 0, y: 200, z: 0 } }] },
    );
    expect(held(shoved, pushAt(0, toPassenger)).share).toBeCloseTo(0.3, 9);
  });
});

describe('wheels', () => {
  const wheel = (heldForward: boolean, heldBack: boolean) =>
    block(low, { rolls: { along: { x: -1, y: 0, z: 0 }, heldForward, heldBack } });
  it('roll freely unless something keeps them, one way or the other', () => {
    expect(held(wheel(false, false), pushAt(0, way(0))).share).toBeCloseTo(0, 9);
    expect(held(wheel(false, false), pushAt(0, toPassenger)).share).toBeCloseTo(0.5, 9);
    // Rolling forward is toward −x here: a push toward −x needs what keeps it from rolling forward.
    expect(held(wheel(true, false), pushAt(0, way(Math.PI))).share).toBeCloseTo(0.5, 9);
    expect(held(wheel(true, false), pushAt(0, way(0))).share).toBeCloseTo(0, 9);
    expect(held(wheel(false, true), pushAt(0, way(0))).share).toBeCloseTo(0.5, 9);
  });
});

describe('struts and ties', () => {
  const bare = held(block(tall, { friction: 1 }), pushAt(3, toPassenger)).share;
  const withStrut = (ties: readonly PushTie[], change: Partial<PushStrut> = {}) =>
    block(tall, { friction: 1 }, { struts: [strut('S', 1, change)], ties });

  it('an untied strut whose base slides adds nothing at all', () => {
    expect(bare).toBeCloseTo(1 / 3, 9);
    expect(held(withStrut([]), pushAt(3, toPassenger)).share).toBeCloseTo(bare, 9);
  });

  it('adds what the sum on paper says once it is tied', () => {
    const tied = held(withStrut([back('S', 1)]), pushAt(3, toPassenger));
    // At 45° it pushes up u and in u at 2 m; its base's friction is 0.3 u, the tie takes the rest. About the block's
    // edge: 3 λ W = W + 2 u. Sideways: λ W = (W − u) + 0.3 u. So u = 2 W ÷ 4.1 and λ = 27 ÷ 41.
    expect(tied.share).toBeCloseTo(27 / 41, 9);
    expect(held(withStrut([back('S', 1)]), pushAt(3, way(-Math.PI / 2))).share).toBeCloseTo(bare, 9);
  });

  it('holds untied where it stands steeply enough', () => {
    const steep = { foot: { x: 0, y: 1.5, z: 0 } };
    expect(held(withStrut([], steep), pushAt(3, toPassenger)).share).toBeGreaterThan(bare + 0.01);
  });

  it('is limited by its tie, and by its own rating, and says so', () => {
    const weakTie = held(withStrut([back('S', 1, 50)]), pushAt(3, toPassenger));
    expect(weakTie.share).toBeGreaterThan(bare);
    expect(weakTie.gives).toEqual({ kind: 'tie', of: 'tie of S' });
    const weak = held(withStrut([back('S', 1)], { capacity: 100 }), pushAt(3, toPassenger));
    expect(weak.gives).toEqual({ kind: 'strut', of: 'S' });
    expect(weak.share).toBeGreaterThan(bare);
    expect(weak.share).toBeLessThan(held(withStrut([back('S', 1)]), pushAt(3, toPassenger)).share);
  });

  it('borrows no preload: a second strut on the other side changes nothing', () => {
    const one = held(withStrut([back('S', 1)]), pushAt(3, toPassenger)).share;
    const both = block(
      tall,
      { friction: 1 },
      { struts: [strut('S', 1), strut('T', -1)], ties: [back('S', 1), back('T', -1)] },
    );
    expect(held(both, pushAt(3, toPassenger)).share).toBeCloseTo(one, 9);
    const rolling = block(
      low,
      { friction: 0 },
      {
        struts: [
          strut('S', 1, { head: { x: 0, y: 1, z: 0.9 } }),
          strut('T', -1, { head: { x: 0, y: -1, z: 0.9 } }),
        ],
      },
    );
    expect(held(rolling, pushAt(0, way(0))).share).toBeCloseTo(0, 9);
  });

  it('lets a line to the ground hold the way it pulls, and hang slack the other way', () => {
    const line: PushTie = {
      id: 'line',
      from: { kind: 'body', body: 'block', at: { x: 0, y: -1, z: 0 } },
      to: { kind: 'ground', at: { x: 0, y: -5, z: 0 } },
      rating: 200,
    };
    const lined = block(low, {}, { ties: [line] });
    expect(held(lined, pushAt(0, toPassenger)).share).toBeCloseTo(0.7, 9);
    expect(held(lined, pushAt(0, way(-Math.PI / 2))).share).toBeCloseTo(0.5, 9);
  });

  // OpenStax College Physics, section 9.3, A-frame sign: 8.00 kg, base 1.10 m, height 1.30 m, tie 0.50 m below the
  // hinge, no friction below: tie tension 21.6 N, 39.2 N a base. It stands with a tie of 21.6 N, and not with 21.5 N.
  it.each([
    [21.6, 'holds'],
    [21.5, 'cannot stand'],
  ] as const)('an A-frame with a tie of %f N %s', (rating, kind) => {
    const leg = (id: string, side: 1 | -1) => ({
      id,
      weight: 4 * 9.8,
      center: { x: 0, y: side * 0.275, z: 0.65 },
    });
    const frame: PushSystem = {
      bodies: [leg('left', -1), leg('right', 1)],
      contacts: [-0.2, 0.2].flatMap((x): PushContact[] => [
        ...([-1, 1] as const).map((side) => ({
          id: `foot ${x} ${side}`,
          upper: side < 0 ? 'left' : 'right',
          lower: 'ground' as const,
          at: { x, y: side * 0.55, z: 0 },
          friction: 0,
        })),
        {
          id: `hinge ${x}`,
          upper: 'left',
          lower: 'right',
          at: { x, y: 0, z: 1.3 },
          friction: 0,
          coupled: true,
        },
      ]),
      stacks: [],
      struts: [],
      ties: [
        {
          id: 'tie',
          from: { kind: 'body', body: 'left', at: { x: 0, y: -0.55 * (0.5 / 1.3), z: 0.8 } },
          to: { kind: 'body', body: 'right', at: { x: 0, y: 0.55 * (0.5 / 1.3), z: 0.8 } },
          rating,
        },
      ],
      loads: [],
      gravity: down,
    };
    const sideways = { body: 'left', at: { x: 0, y: 0, z: 0 }, direction: toPassenger };
    expect(heldPush(frame, sideways).kind).toBe(kind);
  });
});

describe('limits', () => {
  it('stops where a contact is full', () => {
    // Tipping puts all of 1000 on two corners: at 300 each it stops sooner.
    const full = held(block(tall, { friction: 1, capacity: 300 }), pushAt(3, toPassenger));
    expect(full.gives?.kind).toBe('contact');
    // Two corners hold 600 at 1 m, two the other 400: moment 600 − 400.
    expect(full.share).toBeCloseTo(0.2 / 3, 9);
  });

  it('stops where a stack leans over', () => {
    const stack = {
      id: 'crib',
      contacts: ['-1,-1', '-1,1', '1,-1', '1,1'],
      height: 4,
      base: { x: [-2, 2], y: [-1, 1] },
    } as const;
    const leaning = held(block(low, { friction: 1 }, { stacks: [stack] }), pushAt(0, toPassenger));
    // Force on its top at 4 m, over an edge 1 m off: a quarter of the weight.
    expect(leaning.share).toBeCloseTo(0.25, 9);
    expect(leaning.gives).toEqual({ kind: 'lean', of: 'crib' });
  });

  it('never holds more for a weaker strut, tie or contact, nor less for another support', () => {
    const sizes = [260, 500, 900];
    const shares = sizes.map(
      (capacity) => held(block(tall, { friction: 1, capacity }), pushAt(3, toPassenger)).share,
    );
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  });
});

describe('corners of the ranges', () => {
  it('come to the same one after the other as each by itself', () => {
    const cases = [0.8, 1, 1.4].flatMap((factor) =>
      [-0.3, 0.2].map((y) => {
        const system = block(
          tall,
          { friction: 0.6, capacity: 420 },
          { struts: [strut('S', 1)], ties: [back('S', 1)] },
        );
        const moved = {
          ...system,
          bodies: system.bodies.map((b) => ({ ...b, weight: b.weight * factor, center: { ...b.center, y } })),
        };
        return { system: moved, push: { ...pushAt(3, way(1.1)), at: { x: 0, y, z: 3 } } };
      }),
    );
    const together = [...heldPushes(cases)];
    expect(together).toHaveLength(cases.length);
    cases.forEach(({ system, push }, i) => {
      const [a, b] = [together[i], held(system, push)];
      if (a?.kind !== 'holds') throw new Error(a?.kind);
      expect(a.share).toBeCloseTo(b.share, 9);
      expect(a.force).toBeCloseTo(b.force, 5);
      expect(a.proven).toBe(true);
    });
  });

  it('mirror', () => {
    const leaning = block(tall, { friction: 0.6 }, { struts: [strut('S', 1)], ties: [back('S', 1)] });
    const mirrored = block(tall, { friction: 0.6 }, { struts: [strut('S', -1)], ties: [back('S', -1)] });
    for (let i = 0; i < 24; i++) {
      const angle = (i * Math.PI) / 12;
      expect(held(mirrored, pushAt(3, way(-angle))).share).toBeCloseTo(
        held(leaning, pushAt(3, way(angle))).share,
        9,
      );
    }
  });
});
