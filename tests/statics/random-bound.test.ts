import { statics } from '@cribwright/engine';
import { inOneGo } from '@cribwright/engine/internal';
import { randomScene } from '@cribwright/engine/testing/statics';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { highs, type Solver } from '../published/linear-program.js';
import { linearProgram } from './linear-bound.js';

// The linear program is written from the scene alone and solved by HiGHS. It knows no stiffness and no history: it
// asks only whether any forces are in balance.

let solve: Solver;
beforeAll(async () => {
  solve = await highs();
});

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const runs = { numRuns: 120, endOnFailure: true };

describe('120 random scenes against the linear program', () => {
  it('never rest where no forces are in balance, and never are said to fall where some are', () => {
    const seen = { rests: 0, falls: 0, 'not proven': 0 };
    const look = (scene: statics.Scene, from: statics.State): statics.State | undefined => {
      const outcome = inOneGo(statics.settle(scene, from));
      switch (outcome.kind) {
        case 'rests':
          seen.rests++;
          expect(solve(linearProgram(scene, outcome.state, 'outer'))).toBeDefined();
          return outcome.state;
        case 'falls':
          seen.falls++;
          // What fell is without the feet that went first.
          expect(
            solve(linearProgram(scene, statics.lose(scene, from, outcome.feetGone), 'inner')),
          ).toBeUndefined();
          return undefined;
        case 'not proven':
          // Some way of sharing the forces would do, so that it cannot be called falling; nor is it called rest.
          seen['not proven']++;
          expect(
            solve(linearProgram(scene, statics.lose(scene, from, outcome.feetGone), 'outer')),
          ).toBeDefined();
          return undefined;
        case 'not solved':
          throw new Error(JSON.stringify(outcome));
      }
    };
    fc.assert(
      fc.property(seeds, (seed) => {
        const { scene, later, lost } = randomScene(seed);
        const first = look(scene, statics.start(scene, later));
        if (first === undefined) return;
        const built = look(scene, statics.place(scene, first, later));
        if (built !== undefined) look(scene, statics.lose(scene, built, lost));
      }),
      runs,
    );
    expect(seen.rests).toBeGreaterThan(250);
    expect(seen.falls).toBeGreaterThan(3);
  });

  it('hold no push that the linear program calls too great', () => {
    let held = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const { scene, push } = randomScene(seed);
        const outcome = inOneGo(statics.settle(scene, statics.start(scene)));
        if (outcome.kind !== 'rests') return;
        const result = inOneGo(statics.push(scene, outcome.state, push));
        if (result.kind !== 'held') throw new Error(JSON.stringify(result));
        const there = [
          ...scene.bodies,
          ...scene.feet.filter((_, i) => result.state.feet[i]?.presence === 'there'),
        ];
        const weight = there.reduce((sum, b) => sum + b.weight, 0);
        const most = solve(linearProgram(scene, result.state, 'outer', { push }));
        if (most === undefined) throw new Error('the state that holds the push is not possible at all');
        held++;
        expect(result.push / weight).toBeLessThanOrEqual(most + 1e-6);
      }),
      runs,
    );
    expect(held).toBeGreaterThan(80);
  });
});
