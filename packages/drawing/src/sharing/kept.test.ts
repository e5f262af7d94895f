import { unchecked } from '@cribwright/engine';
import { samplePlans, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import type { Scene } from '../scene/scene.js';
import { drawScene, firstChoice } from '../scenes/draw-scene.js';
import { leaveOut, putBack, type SentScene } from './kept.js';

/** As a message arrives: a copy, without what is not there. */
const arrived = (sent: SentScene): SentScene => JSON.parse(JSON.stringify(sent));
const written = (scene: Scene | undefined): unknown => scene && JSON.parse(JSON.stringify(scene));

const [moved] = trailerOnCar.cribs;
if (moved === undefined) throw new Error('the sample has no crib');
const later = {
  ...trailerOnCar,
  cribs: [{ ...moved, at: { ...moved.at, x: moved.at.x + 0.05 } }, ...trailerOnCar.cribs.slice(1)],
};
const scenes = (view: 'top' | 'side' | '3d') =>
  [trailerOnCar, later].map((plan) => drawScene(plan, analyze(plan), { ...firstChoice, view }));

describe.each(['top', 'side', '3d'] as const)('a drawing sent after another, view %s', (view) => {
  const [one, two] = scenes(view);
  if (one === undefined || two === undefined) throw new Error('nothing was drawn');
  const first = putBack(undefined, arrived(leaveOut(undefined, one).sent));

  it('comes out whole, and is told in fewer words', () => {
    const { scene, sent } = leaveOut(one, two);
    expect(scene).toEqual(two);
    const message = JSON.stringify(sent);
    expect(message.length).toBeLessThan(JSON.stringify(two).length * 0.75);
    expect(written(putBack(first, JSON.parse(message)))).toEqual(written(two));
  });

  it('is made of the objects of the one before, wherever they say the same', () => {
    const again = putBack(first, arrived(leaveOut(one, structuredClone(one)).sent));
    expect(again?.items).toBe(first?.items);
    expect(again?.space).toBe(first?.space);
    const after = putBack(first, arrived(leaveOut(one, two).sent));
    const caution = (scene: Scene | undefined) => scene?.items.find((i) => i.key === 'caution');
    expect(caution(after)).toBe(caution(first));
    expect(after?.items).not.toBe(first?.items);
  });

  it('is told in few words where only what is known of it changed', () => {
    const before = drawScene(trailerOnCar, unchecked(trailerOnCar), { ...firstChoice, view });
    const start = putBack(undefined, arrived(before));
    const { scene, sent } = leaveOut(before, one);
    expect(scene).toEqual(one);
    const crib = sent.items.find((i) => i.key === 'crib/A');
    expect(crib).toMatchObject({ kind: 'kept', told: { name: expect.stringContaining('load') } });
    const after = putBack(start, arrived(sent));
    expect(written(after)).toEqual(written(one));
    const shapes = (s: Scene | undefined) =>
      s?.items.flatMap((i) => (i.kind === 'group' && i.key === 'crib/A' ? [i.items] : []))[0];
    expect(shapes(after)).toBe(shapes(start));
    // And back, where what was told is no longer so.
    const back = putBack(after, arrived(leaveOut(scene, before).sent));
    expect(written(back)).toEqual(written(before));
  });

  it('is not put together without the one before', () => {
    const { sent } = leaveOut(one, two);
    expect(putBack(undefined, arrived(sent))).toBeUndefined();
    expect(putBack({ ...one, items: [] }, arrived(sent))).toBeUndefined();
  });
});

it('is sent whole where the view is another', () => {
  const [one] = scenes('top');
  const [two] = scenes('side');
  if (one === undefined || two === undefined) throw new Error('nothing was drawn');
  expect(leaveOut(one, two).sent).toBe(two);
  expect(written(putBack(one, arrived(two)))).toEqual(written(two));
});

it.each(Object.entries(samplePlans))('every top part of a drawing of %s has a key of its own', (_, plan) => {
  const analysis = analyze(plan);
  for (const view of ['top', 'side', 'end', '3d', 'crib', 'strut', 'utilization'] as const) {
    const keys = drawScene(plan, analysis, { ...firstChoice, view }).items.map((i) => i.key);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  }
});
