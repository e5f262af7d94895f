import { statics } from '@cribwright/engine';
import {
  at,
  atRest,
  body,
  carriedBy,
  contact,
  degrees,
  end,
  foot,
  footContact,
  frictionAt,
  onBody,
  onFoot,
  sceneOf,
  strut,
  tie,
} from '@cribwright/engine/testing/statics';
import { beforeAll, describe, expect, it } from 'vitest';
import { highs, type Solver } from '../published/linear-program.js';
import { linearProgram } from './linear-bound.js';

let solve: Solver;
beforeAll(async () => {
  solve = await highs();
});

const W = 1e5;
const strap = 2e4;

/** A truck on four tires, with a pair of raked struts at its rear axle; a strap holds their feet together. */
const truck = (angle: number) => {
  const out = 1.5 / Math.tan(degrees(angle));
  const sides = [
    { side: 'left', y: -1 },
    { side: 'right', y: 1 },
  ] as const;
  const place = (y: number) => at(6, y * (1.2 + out), 0);
  return sceneOf({
    bodies: [body(W, at(3, 0, 1.4))],
    feet: sides.map(({ side, y }) => foot(`foot ${side}`, place(y), 200)),
    contacts: [
      ...sides.flatMap(({ side, y }) =>
        [0, 6].map((x) =>
          contact(`tire ${x === 0 ? 'front' : 'rear'} ${side}`, at(x, y, 0), {
            stiffness: 1e6,
            shearStiffness: 5e5,
            friction: 0.6,
          }),
        ),
      ),
      ...sides.map(({ side, y }) => footContact(`foot ${side}`, place(y), 0.1, { stiffness: 2e7 })),
    ],
    struts: sides.map(({ side, y }) =>
      strut(`strut ${side}`, end(onBody(), at(6, y * 1.2, 1.5)), end(onFoot(`foot ${side}`), place(y))),
    ),
    ties: [
      tie('strap', end(onFoot('foot left'), place(-1)), end(onFoot('foot right'), place(1)), {
        stiffness: 1e6,
        capacity: strap,
      }),
    ],
  });
};

const later = ['left', 'right'].flatMap((s) => [`strut ${s}`, `foot ${s}`, `under foot ${s}`]);

/** Built as on a fire ground: the truck stands, the struts are set snug, the strap is put on, and tires are lost. */
const afterLossOf = (scene: statics.Scene, lost: readonly string[]) => {
  const waiting = [...later, 'strap'];
  const stands = atRest(scene, statics.start(scene, waiting));
  const shored = atRest(scene, statics.place(scene, stands.state, waiting));
  return { shored, after: atRest(scene, statics.lose(scene, shored.state, lost)) };
};

describe('a pair of raked struts after a loss', () => {
  const both = ['tire rear left', 'tire rear right'];
  it.each([60, 50])(
    'at %i deg carries half the truck: S = W / 4 sin a, the strap S cos a less friction',
    (angle) => {
      const { shored, after } = afterLossOf(truck(angle), both);
      expect(carriedBy(shored.forces, 'strut left')).toBeLessThan(1e-3 * W);
      const s = W / 4 / Math.sin(degrees(angle));
      const thrust = s * Math.cos(degrees(angle));
      const friction = 0.1 * (s * Math.sin(degrees(angle)) + 200);
      expect(carriedBy(after.forces, 'strut left') / s).toBeCloseTo(1, 4);
      expect(carriedBy(after.forces, 'strap') / (thrust - friction)).toBeCloseTo(1, 4);
    },
  );
  it('at 45 deg no forces within ratings are in balance, and the strap is said to be over', () => {
    const scene = truck(45);
    const { after } = afterLossOf(scene, both);
    expect(statics.usesOf(scene, after.forces)[0]).toMatchObject({ id: 'strap' });
    expect(statics.usesOf(scene, after.forces)[0]?.use).toBeGreaterThan(1.1);
    expect(solve(linearProgram(scene, after.state, 'outer'))).toBeDefined();
    expect(solve(linearProgram(scene, after.state, 'outer', { rated: true }))).toBeUndefined();
    const steep = truck(60);
    const held = afterLossOf(steep, both).after;
    expect(solve(linearProgram(steep, held.state, 'inner', { rated: true }))).toBeDefined();
  });
  it('balances thrust at the feet where one tire is lost, with no less than statics allows', () => {
    const scene = truck(60);
    const { after } = afterLossOf(scene, ['tire rear right']);
    const s = carriedBy(after.forces, 'strut right');
    const pull = carriedBy(after.forces, 'strap');
    const { y } = frictionAt(after.forces, 'under foot right');
    expect((s * Math.cos(degrees(60))) / (pull - y)).toBeCloseTo(1, 6);
    const least = solve(linearProgram(scene, after.state, 'outer', { least: 'strut right' }));
    expect(s).toBeGreaterThanOrEqual(-(least ?? Number.NaN) * (W + 400) * (1 - 1e-9));
    expect(s).toBeGreaterThan(1000);
  });
  it('falls when the foot is lost that the strap is tied to', () => {
    const scene = truck(60);
    const { after } = afterLossOf(scene, both);
    const next = statics.settle(scene, statics.lose(scene, after.state, ['foot right']));
    let step = next.next();
    while (step.done !== true) step = next.next();
    expect(step.value.kind).toBe('falls');
  });
});
