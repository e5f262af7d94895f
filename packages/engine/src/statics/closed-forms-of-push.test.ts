import { describe, expect, it } from 'vitest';
import { inOneGo } from '../stepwise/stepwise.js';
import { place } from './place.js';
import { pushRose } from './push-rose.js';
import type { Contact, Scene } from './scene.js';
import { start } from './state.js';
import {
  at,
  atRest,
  block,
  body,
  contact,
  degrees,
  end,
  grade,
  ground,
  heldBy,
  onBody,
  sceneOf,
  tie,
  toward,
} from './testing/sample-scenes.js';
import { pile, shoredBlock, strutBetweenBlocks } from './testing/worked-scenes.js';

// Each number follows by algebra from the laws of statics; the derivation stands beside it. W = 100 kN.
const W = 1e5;
const near = (value: number, expected: number, part = 1e-4) =>
  expect(Math.abs(value - expected), `${value}, expected ${expected}`).toBeLessThanOrEqual(
    part * Math.max(Math.abs(expected), 1e-3 * W),
  );
const angles = [0, 15, 30, 45, 60, 75, 90, 135, 180, 200, 270, 345];

describe('a block slides at mu W or tips at W b / 2h, whichever is less', () => {
  const size = { length: 4, width: 2, height: 3 };
  it.each(angles)('slides, pushed low at %i deg', (angle) => {
    const held = heldBy(block(size, 0.3), at(2, 0, 0.2), toward(angle));
    near(held.push, 0.3 * W);
    expect(held.ends).toMatchObject({ kind: 'plateau' });
    expect('sliding' in held.ends && held.ends.sliding).toHaveLength(4);
  });
  it.each(angles)('tips, pushed high at %i deg', (angle) => {
    // Over the ends at W (l/2) / (h |cos|), over the sides at W (b/2) / (h |sin|).
    const h = 2.5;
    const over = (half: number, part: number) => (W * half) / (h * Math.max(Math.abs(part), 1e-9));
    const expected = Math.min(over(2, Math.cos(degrees(angle))), over(1, Math.sin(degrees(angle))));
    const held = heldBy(block(size, 0.9), at(2, 0, h), toward(angle));
    near(held.push, expected);
    expect('open' in held.ends && held.ends.open.length).toBeGreaterThan(0);
  });
  it('has a rose that is as long on both sides', () => {
    const scene = block(size, 0.9);
    const rose = inOneGo(pushRose(scene, atRest(scene).state, { body: 'body', at: at(2, 0, 2) }));
    expect(rose).toHaveLength(24);
    const pushes = rose.map(({ result }) => (result.kind === 'held' ? result.push : Number.NaN));
    for (let i = 0; i < 24; i++) near(pushes[i] ?? Number.NaN, pushes[(i + 12) % 24] ?? Number.NaN);
  });
  it('tips from its own edge when its weight is off center', () => {
    const scene = { ...block(size, 0.9), bodies: [body(W, at(2, 0.4, 1))] };
    near(heldBy(scene, at(2, 0, 2), toward(90)).push, (W * 0.6) / 2);
    near(heldBy(scene, at(2, 0, 2), toward(270)).push, (W * 1.4) / 2);
  });
});

describe('on a grade of 6 deg', () => {
  const scene = sceneOf({ ...block({ length: 4, width: 2, height: 1 }, 0.3), gravity: grade(6) });
  const along = W * Math.sin(degrees(6));
  const across = 0.3 * W * Math.cos(degrees(6));
  it('uphill: mu W cos a + W sin a', () =>
    near(heldBy(scene, at(2, 0, 0.2), at(1, 0, 0)).push, across + along));
  it('downhill: mu W cos a - W sin a', () =>
    near(heldBy(scene, at(2, 0, 0.2), at(-1, 0, 0)).push, across - along));
  it('sideways: the friction cone leaves sqrt((mu W cos a)^2 - (W sin a)^2)', () =>
    near(heldBy(scene, at(2, 0, 0.2), at(0, 1, 0)).push, Math.sqrt(across ** 2 - along ** 2), 1e-3));
});

describe('wheels', () => {
  const wheels = (stops: Partial<NonNullable<Contact['rolling']>>, axle: (c: Contact) => boolean): Scene => {
    const scene = block({ length: 4, width: 2, height: 1 }, 0.7);
    return {
      ...scene,
      bodies: [body(W, at(1, 0, 0.5))],
      contacts: scene.contacts.map((c) => ({
        ...c,
        rolling: { along: at(1, 0, 0), stopsForward: false, stopsBack: false, ...(axle(c) ? stops : {}) },
      })),
    };
  };
  const all = () => true;
  it('free wheels hold nothing along, and mu W across', () => {
    const scene = wheels({}, all);
    near(heldBy(scene, at(1, 0, 0.2), at(1, 0, 0)).push, 0);
    // At the center of gravity, so that both axles slip at once.
    near(heldBy(scene, at(1, 0, 0.2), at(0, 1, 0)).push, 0.7 * W);
  });
  it('chocks on one side hold only against that side', () => {
    const scene = wheels({ stopsForward: true }, all);
    near(heldBy(scene, at(1, 0, 0), at(1, 0, 0)).push, 0.7 * W);
    near(heldBy(scene, at(1, 0, 0), at(-1, 0, 0)).push, 0);
  });
  it('one chocked axle holds mu times what stands on it, and no more', () => {
    // The axle at x = 0 carries three quarters of the weight.
    const scene = wheels({ stopsForward: true, stopsBack: true }, (c) => c.at.x === 0);
    near(heldBy(scene, at(1, 0, 0), at(1, 0, 0)).push, 0.7 * 0.75 * W);
  });
});

describe('turning on the spot', () => {
  it('a bar on two ends, pushed across at one end, slides there at mu W / 2', () => {
    const scene = block({ length: 8, width: 0.02, height: 0.01 }, 0.4);
    near(heldBy(scene, at(8, 0, 0), at(0, 1, 0)).push, (0.4 * W) / 2, 3e-3);
  });
});

describe('bodies on and beside bodies', () => {
  it('the upper one slides on the lower at mu of its own weight', () =>
    near(heldBy(pile(W), at(0, 0, 0.5), at(1, 0, 0), 'b').push, 0.5 * (W / 2)));
  it('the lower one takes the upper along, at mu of both', () =>
    near(heldBy(pile(W), at(0, 0, 0), at(1, 0, 0), 'a').push, 0.2 * 1.5 * W));
  it('a strut between two blocks brings the second to bear', () => {
    const scene = strutBetweenBlocks(W, 'strut');
    near(heldBy(scene, at(0, 0, 0), at(1, 0, 0), 'left').push, 0.4 * 2 * W);
    near(heldBy(scene, at(0, 0, 0), at(-1, 0, 0), 'left').push, 0.4 * W);
    near(heldBy(strutBetweenBlocks(W, 'tie'), at(0, 0, 0), at(-1, 0, 0), 'left').push, 0.4 * 2 * W);
  });
});

describe('struts and ties', () => {
  const b = { length: 4, width: 2, height: 3 };
  const angle = 45;
  const alone = (W * 1) / 2.5;
  it('an untied strut with cos a > mu sin a adds nothing', () => {
    const held = heldBy(shoredBlock(W, 0.3, false), at(2, 0, 2.5), at(0, 1, 0));
    near(held.push, alone, 1e-3);
  });
  it('nor does one on the other side', () =>
    near(heldBy(shoredBlock(W, 0.3, true), at(2, 0, 2.5), at(0, -1, 0)).push, alone));
  it('tied, it holds up to its rating: moments about the edge', () => {
    // S turns about the edge y = 1 by S cos a at 2 m.
    const held = heldBy(shoredBlock(W, 0.3, true), at(2, 0, 2.5), at(0, 1, 0));
    expect(held.ends).toMatchObject({ kind: 'rating', use: { id: 'S' } });
    near(held.push, alone + (5e3 * Math.cos(degrees(angle)) * 2) / 2.5, 2e-3);
    expect(held.push).toBeLessThanOrEqual(alone + (5e3 * Math.cos(degrees(angle)) * 2) / 2.5);
  });
  it('untied, it holds where mu sin a >= cos a', () => {
    const held = heldBy(shoredBlock(W, 1.05, false), at(2, 0, 2.5), at(0, 1, 0));
    near(held.push, alone + (5e3 * Math.cos(degrees(angle)) * 2) / 2.5, 2e-3);
  });
  it('an anchored strap adds its rating to friction, and nothing the other way', () => {
    const scene: Scene = {
      ...block({ length: 4, width: 2, height: 1 }, 0.3),
      ties: [tie('T', end(onBody(), at(0, 0, 0)), end(ground, at(-3, 0, 0)), { capacity: 1.5e4 })],
    };
    const held = heldBy(scene, at(2, 0, 0), at(1, 0, 0));
    expect(held.ends).toMatchObject({ kind: 'rating', use: { id: 'T' } });
    near(held.push, 0.3 * W + 1.5e4, 1e-3);
    near(heldBy(scene, at(2, 0, 0), at(-1, 0, 0)).push, 0.3 * W);
  });
  it('a slack strap catches a sliding block that stays within the movement limit', () => {
    const scene: Scene = {
      ...block({ length: 4, width: 2, height: 1 }, 0.3),
      ties: [
        tie('T', end(onBody(), at(0, 0, 0)), end(ground, at(-3, 0, 0)), { capacity: 1.5e4, slack: 0.05 }),
      ],
      movementLimit: 0.3,
    };
    near(heldBy(scene, at(2, 0, 0), at(1, 0, 0)).push, 0.3 * W + 1.5e4, 1e-3);
    near(heldBy({ ...scene, movementLimit: 0.04 }, at(2, 0, 0), at(1, 0, 0)).push, 0.3 * W);
  });
  it('ends at the rating of a contact: W/4 + push h / 2b on each of the far two', () => {
    const scene = block({ length: 4, width: 2, height: 3 }, 0.9);
    const rated = { ...scene, contacts: scene.contacts.map((c) => ({ ...c, capacity: 0.4 * W })) };
    const held = heldBy(rated, at(2, 0, 2.5), at(0, 1, 0));
    expect(held.ends.kind).toBe('rating');
    near(held.push, ((0.4 - 0.25) * W * 2 * 2) / 2.5, 1e-3);
  });
  it('holds no push at all where something is over its rating as it stands', () => {
    const scene = block(b, 0.9);
    const rated = { ...scene, contacts: scene.contacts.map((c) => ({ ...c, capacity: 0.2 * W })) };
    const held = heldBy(rated, at(2, 0, 2.5), at(0, 1, 0));
    expect(held.push).toBe(0);
    expect(held.ends.kind).toBe('rating');
  });
  it('does not lend snug cribs a load that they do not have', () => {
    // All weight stands on free wheels; snug cribs of high friction beside them carry nothing, and hold nothing.
    const wheel = (x: number, y: number) =>
      contact(`wheel ${x} ${y}`, at(x, y, 0), {
        rolling: { along: at(1, 0, 0), stopsForward: false, stopsBack: false },
        friction: 0.7,
      });
    const crib = (x: number, y: number) => contact(`crib ${x} ${y}`, at(x, y, 0), { friction: 0.9 });
    const scene = sceneOf({
      bodies: [body(W, at(2, 0, 1))],
      contacts: [0, 4].flatMap((x) => [-1, 1].flatMap((y) => [wheel(x, y), crib(x === 0 ? 1 : 3, y)])),
    });
    const waiting = scene.contacts.filter((c) => c.id.startsWith('crib')).map((c) => c.id);
    const held = heldBy(scene, at(2, 0, 0), at(1, 0, 0), 'body', placedLater(scene, waiting));
    near(held.push, 0);
  });
});

function placedLater(scene: Scene, waiting: readonly string[]) {
  const first = atRest(scene, start(scene, waiting)).state;
  return place(scene, first, waiting);
}
