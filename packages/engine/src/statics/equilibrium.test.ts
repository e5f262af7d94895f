import { describe, expect, it } from 'vitest';
import { imbalanceOf } from './equilibrium.js';
import type { Forces } from './forces.js';
import { at, atRest, block, grade, onBody, sceneOf } from './testing/sample-scenes.js';
import { rakedPairs } from './testing/worked-scenes.js';

const W = 1e5;
const scene = sceneOf({ ...block({ length: 4, width: 2, height: 2 }, 0.4), gravity: grade(5) });
const { state, forces } = atRest(scene);

const changed = (id: string, change: Partial<Forces['contacts'][number]>): Forces => ({
  ...forces,
  contacts: forces.contacts.map((c) => (c.id === id ? { ...c, ...change } : c)),
});

describe('the sum of all forces, apart from the solver', () => {
  it('is nothing at rest', () => {
    const off = imbalanceOf(scene, state, forces);
    expect(off.force).toBeLessThan(1e-6 * W);
    expect(off.moment).toBeLessThan(1e-6 * W);
    expect(off.inadmissible).toBe(0);
  });
  it('sees a force that is off', () => {
    const normal = (forces.contacts.find((c) => c.id === '0 1')?.normal ?? 0) + 100;
    expect(imbalanceOf(scene, state, changed('0 1', { normal })).force).toBeCloseTo(100, 2);
  });
  it('sees forces that add up and turn the body', () => {
    const [a, b] = ['0 1', '4 1'].map((id) => forces.contacts.find((c) => c.id === id)?.normal ?? 0);
    const swapped: Forces = {
      ...forces,
      contacts: forces.contacts.map((c) =>
        c.id === '0 1'
          ? { ...c, normal: (a ?? 0) + 50 }
          : c.id === '4 1'
            ? { ...c, normal: (b ?? 0) - 50 }
            : c,
      ),
    };
    const off = imbalanceOf(scene, state, swapped);
    expect(off.force).toBeLessThan(1e-3);
    expect(off.moment).toBeCloseTo(50 * 4, 1);
  });
  it('sees friction outside its cone, a contact that pulls, and a wheel that is held by nothing', () => {
    const friction = at(0.4 * 1e5, 0, 0);
    expect(imbalanceOf(scene, state, changed('0 1', { friction })).inadmissible).toBeGreaterThan(1e4);
    expect(
      imbalanceOf(scene, state, changed('0 1', { normal: -5, friction: at(0, 0, 0) })).inadmissible,
    ).toBe(5);
    const wheels = {
      ...scene,
      contacts: scene.contacts.map((c) => ({
        ...c,
        rolling: { along: at(1, 0, 0), stopsForward: true, stopsBack: false },
      })),
    };
    // Friction uphill, against a roll toward -x that nothing stops.
    expect(imbalanceOf(wheels, state, forces).inadmissible).toBeGreaterThan(1000);
  });
  it('sees a load that nobody carries', () => {
    const load = { on: onBody(), at: at(2, 0, 1), force: at(0, 0, -70) };
    expect(imbalanceOf(scene, state, forces, [load]).force).toBeCloseTo(70, 2);
  });
  it('sees a foot that is out of balance by itself', () => {
    const pairs = rakedPairs(W, 60, 0.1, true);
    const rest = atRest(pairs);
    const slack = { ...rest.forces, ties: rest.forces.ties.map((t) => ({ ...t, force: 0 })) };
    expect(imbalanceOf(pairs, rest.state, slack).force).toBeCloseTo(
      rest.forces.ties[0]?.force ?? Number.NaN,
      1,
    );
  });
});
