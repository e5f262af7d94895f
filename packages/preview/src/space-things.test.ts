import { drawScene, firstChoice } from '@cribwright/drawing';
import { unchecked } from '@cribwright/engine';
import { trailerOnCar as plan } from '@cribwright/model/testing';
import { Color, type Group, LineSegments, Mesh } from 'three';
import { expect, it } from 'vitest';
import { reachOf, SpaceThings } from './space-things.js';

const inks = () => new Color('#123456');
const spaceOf = (p: typeof plan) => {
  const { space } = drawScene(p, unchecked(p), { ...firstChoice, view: '3d' });
  if (space === undefined) throw new Error('the view in space has no space');
  return space;
};
const space = spaceOf(plan);
const groups = (things: SpaceThings) =>
  new Map(things.group.children.map((g) => [String(g.userData.element), g as Group]));

it('makes one shape of all pieces of an element that have one tone', () => {
  const things = new SpaceThings();
  things.show(space.things, inks, undefined);
  const crib = space.things.find((t) => t.ref.element === 'crib/A');
  const own = groups(things).get('crib/A');
  const tones = new Set(crib?.solids.map((s) => s.tone)).size;
  expect(own?.children.filter((c) => c instanceof Mesh)).toHaveLength(tones);
  expect(own?.children.filter((c) => c instanceof LineSegments)).toHaveLength(tones);
  // Six faces of two triangles for each timber and wedge.
  const corners = own?.children.reduce(
    (sum, c) => sum + (c instanceof Mesh ? c.geometry.getAttribute('position').count : 0),
    0,
  );
  expect(corners).toBe((crib?.solids.length ?? 0) * 36);
});

it('leaves an element alone that did not change, and takes down what is gone', () => {
  const things = new SpaceThings();
  things.show(space.things, inks, undefined);
  const before = groups(things);
  const [first, ...rest] = space.things;
  if (first === undefined) throw new Error('nothing stands');
  things.show([{ ...first }, ...rest.slice(0, -1)], inks, undefined);
  const after = groups(things);
  expect(after.size).toBe(before.size - 1);
  expect(after.get(first.ref.element)).not.toBe(before.get(first.ref.element));
  for (const { ref } of rest.slice(0, -1)) expect(after.get(ref.element)).toBe(before.get(ref.element));
  things.clear();
  expect(things.group.children).toHaveLength(0);
});

it('lights one element and leaves the others', () => {
  const things = new SpaceThings();
  things.show(space.things, inks, undefined);
  const before = groups(things);
  things.show(space.things, inks, 'crib/A');
  const after = groups(things);
  for (const [element, group] of before)
    expect(after.get(element) === group, element).toBe(element !== 'crib/A');
});

it('looks at the middle of what stands', () => {
  const { middle, reach } = reachOf(space);
  const length = plan.vehicles[0]?.length ?? 0;
  expect(middle.x).toBeGreaterThan(0);
  expect(middle.x).toBeLessThan(length);
  expect(reach).toBeGreaterThan(length / 5);
});
