import type { statics } from '@cribwright/engine';
import {
  aFrame,
  at,
  atRest,
  block,
  carriedBy,
  grade,
  heldBy,
  ladder,
  outcomeOf,
  pile,
  rakedPairs,
  sceneOf,
  shoredBlock,
  strutBetweenBlocks,
  toward,
} from '@cribwright/engine/testing/statics';
import { beforeAll, describe, expect, it } from 'vitest';
import { type RigidBodyEngine, rigidBodyEngine } from './rigid-body-engine.js';

// MuJoCo (@mujoco/mujoco 3.14.0) steps through time with its own contacts, friction and inertia; the scene is all
// that it has from us. Pushes are found to a part in 250 there.

let theirs: RigidBodyEngine;
beforeAll(async () => {
  theirs = await rigidBodyEngine();
});

const W = 1e4;
const within = (ours: number, other: number, part: number) =>
  expect(Math.abs(ours - other), `ours ${ours}, theirs ${other}`).toBeLessThanOrEqual(part * Math.abs(other));

interface Case {
  readonly what: string;
  readonly scene: statics.Scene;
  readonly height: number;
  readonly x?: number;
  readonly angle: number;
  readonly body?: string;
}

const tall = { length: 4, width: 2, height: 3 };
const pushes: readonly Case[] = [
  { what: 'a block that slides', scene: block(tall, 0.3, W), x: 2, height: 0.2, angle: 0 },
  { what: 'a block that slides, pushed slantwise', scene: block(tall, 0.3, W), x: 2, height: 0.2, angle: 30 },
  { what: 'a block that tips over its end', scene: block(tall, 0.9, W), x: 2, height: 2.5, angle: 0 },
  { what: 'a block that tips over its side', scene: block(tall, 0.9, W), x: 2, height: 2.5, angle: 90 },
  { what: 'a block that tips, pushed slantwise', scene: block(tall, 0.9, W), x: 2, height: 2.5, angle: 120 },
  {
    what: 'a block on a grade, pushed across',
    scene: sceneOf({ ...block({ length: 4, width: 2, height: 1 }, 0.3, W), gravity: grade(6) }),
    x: 2,
    height: 0.2,
    angle: 90,
  },
  {
    what: 'a block on a grade, pushed down it',
    scene: sceneOf({ ...block({ length: 4, width: 2, height: 1 }, 0.3, W), gravity: grade(6) }),
    x: 2,
    height: 0.2,
    angle: 180,
  },
  { what: 'the upper one of a pile', scene: pile(W), height: 0.5, angle: 0, body: 'b' },
  {
    what: 'two blocks with a strut between',
    scene: strutBetweenBlocks(W, 'strut'),
    height: 0,
    angle: 0,
    body: 'left',
  },
  {
    what: 'two blocks with a tie between',
    scene: strutBetweenBlocks(W, 'tie'),
    height: 0,
    angle: 180,
    body: 'left',
  },
  { what: 'a strut whose foot is not tied', scene: shoredBlock(W, 0.3, false), x: 2, height: 2.5, angle: 90 },
];

describe('the greatest push, beside a general rigid-body engine', () => {
  it.each(pushes.map((c) => [c.what, c] as const))(
    '%s',
    (_, { scene, x = 0, height, angle, body = 'body' }) => {
      const ours = heldBy(scene, at(x, 0, height), toward(angle), body).push;
      const push = { body, at: at(x, 0, height), direction: toward(angle) };
      within(ours, theirs.push(scene, push, 2 * ours), 0.01);
    },
  );
});

describe('forces at rest, beside a general rigid-body engine', () => {
  it('a ladder on a smooth wall', () => {
    const scene = ladder(60, 0.6, 0, 1000);
    within(carriedBy(atRest(scene).forces, 'wall 0.2'), theirs.carried(scene, 'wall 0.2'), 0.01);
  });
  it('the tie of a sign of two legs', () => {
    within(carriedBy(atRest(aFrame()).forces, 'tie'), theirs.carried(aFrame(), 'tie'), 0.01);
  });
  it('struts and ties of raked pairs', () => {
    const scene = rakedPairs(W, 60, 0.02, true, 20);
    const { forces } = atRest(scene);
    within(carriedBy(forces, 'strut 1 1'), theirs.carried(scene, 'strut 1 1'), 0.01);
    within(carriedBy(forces, 'tie 1'), theirs.carried(scene, 'tie 1'), 0.05);
  });
});

describe('rest or not, beside a general rigid-body engine', () => {
  const least = 1 / (2 * Math.tan(Math.PI / 3));
  it.each([
    ['a ladder on a floor that is rough enough', ladder(60, least * 1.03, 0, 1000)],
    ['a ladder on a floor that is not', ladder(60, least * 0.97, 0, 1000)],
    ['a block on a grade that holds', sceneOf({ ...block(tall, 0.22, W), gravity: grade(12) })],
    ['a block on a grade that does not', sceneOf({ ...block(tall, 0.2, W), gravity: grade(12) })],
    ['raked pairs that are tied', rakedPairs(W, 60, 0.1, true, 20)],
    ['raked pairs that are not', rakedPairs(W, 60, 0.1, false, 20)],
  ] as const)('%s', (_, scene) => {
    expect(outcomeOf(scene).kind === 'rests').toBe(theirs.rests(scene));
  });
});
