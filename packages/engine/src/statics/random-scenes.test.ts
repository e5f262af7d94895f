import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOneGo } from '../stepwise/stepwise.js';
import { imbalanceOf } from './equilibrium.js';
import { lose } from './loss.js';
import type { Outcome, Rests } from './outcome.js';
import { place } from './place.js';
import { push } from './push.js';
import type { Scene } from './scene.js';
import { settle } from './settle.js';
import { start } from './state.js';
import { type RandomScene, randomScene } from './testing/random-scene.js';
import { outcomeOf } from './testing/sample-scenes.js';
import { times } from './vector.js';

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const runs = { numRuns: 500, endOnFailure: true };
const weightOf = (scene: Scene) => [...scene.bodies, ...scene.feet].reduce((sum, b) => sum + b.weight, 0);

function expectBalance(scene: Scene, r: Rests): void {
  const off = imbalanceOf(scene, r.state, r.forces);
  const weight = weightOf(scene);
  expect(off.force).toBeLessThanOrEqual(1e-6 * weight);
  expect(off.moment).toBeLessThanOrEqual(1e-6 * weight * 10);
  expect(off.inadmissible).toBeLessThanOrEqual(1e-6 * weight);
}

/** First rest, supports placed, one thing lost; each state that rests is looked at. */
function* story({ scene, later, lost }: RandomScene): Generator<Outcome> {
  const first = outcomeOf(scene, start(scene, later));
  yield first;
  if (first.kind !== 'rests') return;
  const placed = outcomeOf(scene, place(scene, first.state, later));
  yield placed;
  if (placed.kind !== 'rests') return;
  yield outcomeOf(scene, lose(scene, placed.state, lost));
}

describe('500 random scenes', () => {
  it('are in balance to a millionth of the weight wherever they rest, as built and after a loss', () => {
    let rested = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const random = randomScene(seed);
        for (const outcome of story(random)) {
          expect(outcome.kind).not.toBe('not solved');
          if (outcome.kind !== 'rests') continue;
          rested++;
          expectBalance(random.scene, outcome);
        }
      }),
      runs,
    );
    expect(rested).toBeGreaterThan(900);
  });

  it('are in balance at the greatest push too, with nothing over its rating that was not before', () => {
    let held = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const { scene, push: of } = randomScene(seed);
        const first = outcomeOf(scene);
        if (first.kind !== 'rests') return;
        const result = inOneGo(push(scene, first.state, of));
        if (result.kind !== 'held') return;
        held++;
        const pushed = {
          on: { kind: 'body', id: of.body } as const,
          at: of.at,
          force: times(of.direction, result.push),
        };
        const off = imbalanceOf(scene, result.state, result.forces, [pushed]);
        expect(off.force).toBeLessThanOrEqual(1e-6 * weightOf(scene));
        expect(off.inadmissible).toBeLessThanOrEqual(1e-6 * weightOf(scene));
        if (result.push === 0) return;
        const capacity = new Map(
          [...scene.contacts, ...scene.struts, ...scene.ties].map((e) => [e.id, e.capacity]),
        );
        for (const c of result.forces.contacts)
          expect(c.normal).toBeLessThanOrEqual((capacity.get(c.id) ?? Number.POSITIVE_INFINITY) * (1 + 1e-9));
        for (const e of [...result.forces.struts, ...result.forces.ties])
          expect(e.force).toBeLessThanOrEqual((capacity.get(e.id) ?? Number.POSITIVE_INFINITY) * (1 + 1e-9));
      }),
      runs,
    );
    expect(held).toBeGreaterThan(350);
  });
});

describe('an answer that comes in steps', () => {
  it('is the same in one go and in steps, and may be given up at any step', () => {
    fc.assert(
      fc.property(seeds, fc.nat(40), (seed, stop) => {
        const { scene } = randomScene(seed);
        const whole = outcomeOf(scene);
        const given = settle(scene, start(scene));
        for (let i = 0; i < stop; i++) if (given.next().done === true) break;
        expect(outcomeOf(scene)).toEqual(whole);
      }),
      { numRuns: 40 },
    );
  });
});
