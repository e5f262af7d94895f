import { describe, expect, it } from 'vitest';
import { lose } from './loss.js';
import { place } from './place.js';
import { start } from './state.js';
import {
  at,
  atRest,
  block,
  body,
  carriedBy,
  contact,
  degrees,
  end,
  foot,
  footContact,
  frictionAt,
  grade,
  ground,
  onBody,
  onFoot,
  outcomeOf,
  sceneOf,
  strut,
  tie,
} from './testing/sample-scenes.js';
import { aFrame, ladder, rakedPairs } from './testing/worked-scenes.js';

// Each number follows by algebra from the laws of statics; the derivation stands beside it. W = 100 kN.
const W = 1e5;
const near = (value: number, expected: number, part = 1e-6) =>
  expect(Math.abs(value - expected), `${value}, expected ${expected}`).toBeLessThanOrEqual(
    part * Math.max(Math.abs(expected), 1e-3 * W),
  );

describe('a rigid cap on equal springs: W/n + My x / sum x^2 + Mx y / sum y^2', () => {
  const xs = [-2, 0, 2];
  const ys = [-1, 1];
  const cap = (ex: number, ey: number) =>
    sceneOf({
      bodies: [body(W, at(ex, ey, 1))],
      contacts: xs.flatMap((x) => ys.map((y) => contact(`${x} ${y}`, at(x, y, 0), { friction: 0 }))),
    });
  it.each([
    [0, 0],
    [0.3, 0],
    [0, 0.2],
    [-0.4, 0.15],
  ])('with its weight off center by %f, %f', (ex, ey) => {
    const { forces } = atRest(cap(ex, ey));
    for (const x of xs)
      for (const y of ys) near(carriedBy(forces, `${x} ${y}`), W / 6 + (W * ex * x) / 16 + (W * ey * y) / 6);
  });
  it('gives what the three that remain give by moments, once the others lift', () => {
    // Springs at x = 0, 1, 4 in a line, twice; at x = 3.6 the first lifts and two lines carry by the lever.
    const line = [0, 1, 4];
    const scene = sceneOf({
      bodies: [body(W, at(3.6, 0, 1))],
      contacts: line.flatMap((x) => ys.map((y) => contact(`${x} ${y}`, at(x, y, 0), { friction: 0 }))),
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, '0 1'), 0);
    near(carriedBy(forces, '1 1'), ((W / 2) * 0.4) / 3);
    near(carriedBy(forces, '4 1'), ((W / 2) * 2.6) / 3);
  });
});

describe('what statics alone decides', () => {
  it('three supports, by moments', () => {
    const scene = sceneOf({
      bodies: [body(W, at(1, 0.2, 1))],
      contacts: [contact('A', at(0, -1, 0)), contact('B', at(0, 1, 0)), contact('C', at(3, 0, 0))],
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, 'C'), W / 3);
    near(carriedBy(forces, 'B') - carriedBy(forces, 'A'), 0.2 * W);
  });
  it('a beam on two supports: W b / L, whatever the stiffness', () => {
    const scene = sceneOf({
      bodies: [body(W, at(1, 0, 0.5))],
      contacts: [0, 4].flatMap((x) =>
        [-0.5, 0.5].map((y) => contact(`${x} ${y}`, at(x, y, 0), { stiffness: x === 0 ? 1e5 * 30 : 1e8 })),
      ),
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, '0 0.5'), ((W / 2) * 3) / 4);
    near(carriedBy(forces, '4 0.5'), ((W / 2) * 1) / 4);
  });
  it('a tool that lifts at one end: moments about the other', () => {
    const scene = sceneOf({
      ...block({ length: 4, width: 2, height: 2 }, 0.4),
      loads: [{ on: onBody(), at: at(4, 0, 1), force: at(0, 0, 2e4) }],
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, '4 1'), (W / 2 - 2e4) / 2);
    near(carriedBy(forces, '0 1'), W / 4);
  });
  it('a side force at a height: the couple goes to the supports', () => {
    const scene = sceneOf({
      ...block({ length: 4, width: 2, height: 2 }, 0.4),
      loads: [{ on: onBody(), at: at(2, 0, 1.5), force: at(0, 1e4, 0) }],
    });
    const { forces } = atRest(scene);
    // 1e4 N at 1.5 m over a track of 2 m, two supports a side.
    near(carriedBy(forces, '0 1') - carriedBy(forces, '0 -1'), (1e4 * 1.5) / 2);
  });
  it('a chain of bodies: each contact carries all that is above it', () => {
    const level = (id: string, lower: string | undefined, z: number) =>
      [-1, 1].flatMap((x) =>
        [-1, 1].map((y) =>
          contact(`${id} ${x} ${y}`, at(x, y, z), {
            upper: onBody(id),
            lower: lower === undefined ? ground : onBody(lower),
          }),
        ),
      );
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 0.5), 'a'), body(W / 2, at(0, 0, 1.5), 'b'), body(W / 4, at(0, 0, 2.5), 'c')],
      contacts: [...level('a', undefined, 0), ...level('b', 'a', 1), ...level('c', 'b', 2)],
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, 'a 1 1'), (1.75 * W) / 4);
    near(carriedBy(forces, 'b 1 1'), (0.75 * W) / 4);
    near(carriedBy(forces, 'c 1 1'), (0.25 * W) / 4);
  });
  it('a V: N = W / (2 cos a) on each side', () => {
    const a = degrees(35);
    const side = (id: string, s: number) =>
      [-1, 1].map((y) =>
        contact(`${id} ${y}`, at(s * 0.5, y, 0), {
          normal: at(-s * Math.sin(a), 0, Math.cos(a)),
          friction: 0,
        }),
      );
    // Below where the normals meet, the weight hangs and cannot roll over.
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 0.2))],
      contacts: [...side('left', -1), ...side('right', 1)],
    });
    const { forces } = atRest(scene);
    near(carriedBy(forces, 'left 1') * 2, W / (2 * Math.cos(a)));
  });
  it('a weight that hangs from four chains: a quarter each when they are upright', () => {
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 0))],
      ties: [-1, 1].flatMap((x) =>
        [-1, 1].map((y) => tie(`${x} ${y}`, end(onBody(), at(x, y, 0.5)), end(ground, at(x, y, 3)))),
      ),
    });
    near(carriedBy(atRest(scene).forces, '1 1'), W / 4);
  });
  it('a weight that hangs from two slings: W / (2 sin a) each', () => {
    const sling = (x: number, y: number) =>
      tie(`${x} ${y}`, end(onBody(), at(0, y, 0.5)), end(ground, at(x, y, 2.5)));
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 0))],
      ties: [sling(-2, -1), sling(2, -1), sling(-2, 1), sling(2, 1)],
    });
    near(carriedBy(atRest(scene).forces, '2 1') * 2, W / (2 * Math.sin(degrees(45))));
  });
});

describe('a ladder on a smooth wall', () => {
  it('leans on the wall by W / (2 tan a), and the floor holds as much', () => {
    const { forces } = atRest(ladder(60, 0.5, 0, 1000));
    near(2 * carriedBy(forces, 'wall 0.2'), 1000 / (2 * Math.tan(degrees(60))), 1e-4);
    near(-2 * frictionAt(forces, 'floor 0.2').x, 1000 / (2 * Math.tan(degrees(60))), 1e-4);
  });
  it('400 N, 5.0 m, 53 deg: 150.7 N (OpenStax University Physics, Example 12.5)', () => {
    const { forces } = atRest(ladder(53, 0.5, 0, 400, 5));
    expect(2 * carriedBy(forces, 'wall 0.2')).toBeCloseTo(150.7, 1);
  });
  it.each([45, 60, 70])('at %i deg slides below mu = 1 / (2 tan a), and not above', (angle) => {
    const least = 1 / (2 * Math.tan(degrees(angle)));
    expect(outcomeOf(ladder(angle, least * 1.005, 0, 1000)).kind).toBe('rests');
    expect(outcomeOf(ladder(angle, least * 0.995, 0, 1000)).kind).toBe('falls');
  });
  it('on a rough wall stands from tan a = (1 - mu_w mu_f) / (2 mu_f)', () => {
    const least = (Math.atan((1 - 0.3 * 0.3) / (2 * 0.3)) * 180) / Math.PI;
    expect(outcomeOf(ladder(least - 0.3, 0.3, 0.3, 1000)).kind).toBe('falls');
    expect(outcomeOf(ladder(least + 0.3, 0.3, 0.3, 1000)).kind).toBe('rests');
  });
});

describe('on a grade', () => {
  const on = (angle: number, friction: number) =>
    sceneOf({ ...block({ length: 4, width: 2, height: 1 }, friction), gravity: grade(angle) });
  it('friction carries W sin a', () => {
    const { forces } = atRest(on(10, 0.4));
    near(
      forces.contacts.reduce((sum, c) => sum + c.friction.x, 0),
      W * Math.sin(degrees(10)),
    );
  });
  it.each([5, 12, 25])('at %i deg slides below mu = tan a, and not above', (angle) => {
    expect(outcomeOf(on(angle, Math.tan(degrees(angle)) * 1.002)).kind).toBe('rests');
    expect(outcomeOf(on(angle, Math.tan(degrees(angle)) * 0.998)).kind).toBe('falls');
  });
  it('tips past tan a = b / 2h, however rough', () => {
    const steep = (angle: number) =>
      outcomeOf(sceneOf({ ...block({ length: 1, width: 2, height: 2 }, 5), gravity: grade(angle) })).kind;
    const limit = (Math.atan(0.5) * 180) / Math.PI;
    expect(steep(limit - 0.2)).toBe('rests');
    expect(steep(limit + 0.2)).toBe('falls');
  });
  it('free wheels roll away; one chocked axle carries W sin a', () => {
    const wheels = (stopsBack: boolean) => {
      const scene = on(5, 0.7);
      return sceneOf({
        ...scene,
        contacts: scene.contacts.map((c) => ({
          ...c,
          rolling: { along: at(1, 0, 0), stopsForward: false, stopsBack: stopsBack && c.at.x === 0 },
        })),
      });
    };
    expect(outcomeOf(wheels(false)).kind).toBe('falls');
    const { forces } = atRest(wheels(true));
    near(2 * frictionAt(forces, '0 1').x, W * Math.sin(degrees(5)));
    near(frictionAt(forces, '4 1').x, 0);
  });
});

describe('supports placed under what already rests', () => {
  const beam = (parts: object = {}) =>
    sceneOf({
      bodies: [body(W, at(2, 0, 1))],
      contacts: [
        ...[-1, 1].flatMap((y) => [contact(`A ${y}`, at(0, y, 0)), contact(`C ${y}`, at(4, y, 0))]),
        ...[-1, 1].map((y) => contact(`B ${y}`, at(3, y, 0), parts)),
      ],
    });
  const waiting = ['B -1', 'B 1'];
  const built = (parts: object = {}) => {
    const scene = beam(parts);
    const before = atRest(scene, start(scene, waiting));
    return { scene, built: atRest(scene, place(scene, before.state, waiting)) };
  };
  it('a snug crib carries nothing', () => {
    near(carriedBy(built().built.forces, 'B 1'), 0);
  });
  it('a snug crib carries what statics gives once the end is lost', () => {
    const { scene, built: before } = built();
    const after = atRest(scene, lose(scene, before.state, ['C -1', 'C 1']));
    near(carriedBy(after.forces, 'B 1'), ((W / 2) * 2) / 3);
    near(carriedBy(after.forces, 'A 1'), ((W / 2) * 1) / 3);
  });
  it('falls when the only support of an end is lost', () => {
    const { scene, built: before } = built();
    expect(outcomeOf(scene, lose(scene, before.state, ['C -1', 'C 1', 'B -1', 'B 1'])).kind).toBe('falls');
  });
  it('a wedge driven to p keeps p 2k / (2k + kB) at the middle of two equal springs', () => {
    const scene = sceneOf({
      bodies: [body(W, at(2, 0, 1))],
      contacts: [0, 2, 4].flatMap((x) =>
        [-1, 1].map((y) =>
          contact(`${x} ${y}`, at(x, y, 0), x === 2 ? { stiffness: 3e7, preload: 8000 } : {}),
        ),
      ),
    });
    const middle = ['2 -1', '2 1'];
    const before = atRest(scene, start(scene, middle));
    const { forces } = atRest(scene, place(scene, before.state, middle));
    near(carriedBy(forces, '2 1'), (8000 * 2e7) / (2e7 + 3e7));
    near(carriedBy(forces, '0 1'), W / 4 - (8000 * 2e7) / (2e7 + 3e7) / 2);
  });
  it('a support with a gap takes its share only after the gap is closed', () => {
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 1))],
      contacts: [
        ...[-1, 1].flatMap((x) => [-1, 1].map((y) => contact(`${x} ${y}`, at(x, y, 0)))),
        ...[-1, 1].map((y) => contact(`gap ${y}`, at(0, y, 0), { gap: 0.001 })),
      ],
    });
    // 4 k d + 2 k (d - gap) = W
    const d = (W + 2 * 1e7 * 0.001) / (6 * 1e7);
    near(carriedBy(atRest(scene).forces, 'gap 1'), 1e7 * (d - 0.001));
    near(carriedBy(atRest(scene).forces, '1 1'), 1e7 * d);
  });
});

describe('struts and ties', () => {
  it.each([50, 60, 70])('a tied pair at %i deg: S = W / (4 sin a), T = S cos a - mu S sin a', (angle) => {
    const { forces } = atRest(rakedPairs(W, angle, 0.1, true));
    const s = W / (4 * Math.sin(degrees(angle)));
    near(carriedBy(forces, 'strut 1 1'), s);
    near(
      carriedBy(forces, 'tie 1'),
      s * Math.cos(degrees(angle)) - 0.1 * (s * Math.sin(degrees(angle)) + 1),
      1e-5,
    );
  });
  it('an untied pair stands only where cos a <= mu sin a', () => {
    const least = 1 / Math.tan(degrees(60));
    expect(outcomeOf(rakedPairs(W, 60, least * 0.995, false, 0.1)).kind).toBe('falls');
    expect(outcomeOf(rakedPairs(W, 60, least * 1.005, false, 0.1)).kind).toBe('rests');
  });
  it('a lost foot takes its strap with it: what leaned on it falls', () => {
    const scene = rakedPairs(W, 60, 0.1, true);
    const { state } = atRest(scene);
    const lost = lose(scene, state, ['foot 1 1']);
    expect(lost.ties[1]?.presence).toBe('lost');
    expect(lost.struts[3]?.presence).toBe('lost');
    expect(outcomeOf(scene, lost).kind).toBe('falls');
  });
  it('ground that gives way under a foot, and a lost strut, take the strap as well', () => {
    const scene = rakedPairs(W, 60, 0.1, true);
    for (const id of ['under foot 1 1', 'strut 1 1'])
      expect(lose(scene, start(scene), [id]).ties.map((t) => t.presence)).toEqual(['there', 'lost']);
  });
  it('a leaning leg on a smooth floor: an A-frame of 8.00 kg with a tie pulls 21.56 N (OpenStax College Physics, 9.3)', () => {
    const { forces } = atRest(aFrame());
    expect(carriedBy(forces, 'tie')).toBeCloseTo(21.56, 1);
    expect(2 * carriedBy(forces, 'hinge 0.2')).toBeCloseTo(21.56, 1);
    expect(2 * carriedBy(forces, 'left 0.2')).toBeCloseTo(39.2, 2);
  });
  it('upright pinned struts sway as soon as the brace is lost', () => {
    const corners = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x, y, id: `${x} ${y}` })));
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 2.5))],
      feet: corners.map((c) => foot(`foot ${c.id}`, at(c.x, c.y, 0))),
      contacts: corners.map((c) => footContact(`foot ${c.id}`, at(c.x, c.y, 0), 0.6)),
      struts: corners.map((c) =>
        strut(`strut ${c.id}`, end(onBody(), at(c.x, c.y, 2)), end(onFoot(`foot ${c.id}`), at(c.x, c.y, 0))),
      ),
      // Crossed in every plane, to anchors in the ground.
      ties: corners.flatMap((c) => [
        tie(`x ${c.id}`, end(onBody(), at(c.x, c.y, 2)), end(ground, at(-c.x, c.y, 0))),
        tie(`y ${c.id}`, end(onBody(), at(c.x, c.y, 2)), end(ground, at(c.x, -c.y, 0))),
      ]),
      loads: [{ on: onBody(), at: at(0, 0, 2.5), force: at(3000, 0, 0) }],
    });
    const { state, forces } = atRest(scene);
    // The two ties that pull back share the side force: 3000 / (2 cos 45).
    near(carriedBy(forces, 'x 1 1'), 3000 / (2 * Math.cos(degrees(45))), 1e-4);
    expect(outcomeOf(scene, lose(scene, state, ['x 1 1', 'x 1 -1'])).kind).toBe('falls');
  });
});

describe('a crib taken as a stack', () => {
  it('stands between body and ground as a body of its own, and carries its weight too', () => {
    const crib = (x: number, y: number) => {
      const id = `crib ${x} ${y}`;
      const feet = [-0.3, 0.3].flatMap((dx) => [-0.3, 0.3].map((dy) => at(x + dx, y + dy, 0)));
      return {
        body: body(1000, at(x, y, 0.5), id),
        contacts: feet.flatMap((p, i) => [
          contact(`${id} base ${i}`, p, { upper: onBody(id) }),
          contact(`${id} top ${i}`, at(p.x, p.y, 1), { lower: onBody(id) }),
        ]),
      };
    };
    const cribs = [-2, 2].flatMap((x) => [-1, 1].map((y) => crib(x, y)));
    const scene = sceneOf({
      bodies: [body(W, at(0, 0, 2)), ...cribs.map((c) => c.body)],
      contacts: cribs.flatMap((c) => c.contacts),
    });
    const { forces } = atRest(scene);
    const under = forces.contacts.filter((c) => c.id.startsWith('crib 2 1 base'));
    near(
      under.reduce((sum, c) => sum + c.normal, 0),
      W / 4 + 1000,
    );
  });
});
