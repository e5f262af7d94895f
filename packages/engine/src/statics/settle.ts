import { problemsOf } from './check-scene.js';
import { imbalanceOf } from './equilibrium.js';
import { forcesAt, stateAt, unknownsOf } from './forces.js';
import { lose } from './loss.js';
import { type Model, modelOf } from './model.js';
import type { NotSolved, Outcome } from './outcome.js';
import { proofOfFalling } from './proof-of-falling.js';
import { farthest, relax } from './relax.js';
import type { Scene } from './scene.js';
import type { State } from './state.js';

/** Share of the whole load by which a scene may be out of balance and still be said to rest. */
export const balanceTolerance = 1e-6;

/**
 * Lets a scene come to rest from a state. A foot that slides or drops away past the movement limit is taken out, with
 * its strut and its ties, and the rest goes on.
 *
 * Gives way often: the caller may stop at any time, and nothing is half done. `inOneGo` of the caller runs it whole.
 */
export function* settle(scene: Scene, state: State): Generator<void, Outcome> {
  const problems = problemsOf(scene);
  if (problems.length > 0) return { kind: 'not solved', reason: { kind: 'unsound scene', problems } };
  const feetGone: string[] = [];
  for (let now = state; ; ) {
    const model = modelOf(scene, now);
    const q = unknownsOf(model, now);
    const began = Float64Array.from(q);
    const end = yield* relax(model, q, began);
    if (end.kind === 'no convergence') return { kind: 'not solved', reason: { kind: 'no convergence' } };
    if (end.kind === 'still') {
      const settled = stateAt(model, now, q);
      const forces = forcesAt(model, q);
      const { force, moment, inadmissible } = imbalanceOf(scene, settled, forces);
      if (isOut(model, force, moment, inadmissible)) return outOfBalance(force, moment, inadmissible);
      return { kind: 'rests', state: settled, forces, imbalance: { force, moment }, feetGone };
    }
    const bodies = end.members.filter((m) => m.kind === 'body');
    if (bodies.length === 0) {
      const gone = end.members.map((m) => m.id);
      feetGone.push(...gone);
      now = lose(scene, now, gone);
      continue;
    }
    const { each } = farthest(model, q, began);
    const moved = end.members
      .map((m) => ({ id: m.id, far: each.get(m.first) ?? 0 }))
      .sort((a, b) => b.far - a.far || (a.id < b.id ? -1 : 1))
      .map((m) => m.id);
    const proof = yield* proofOfFalling(scene, now);
    return proof === undefined
      ? { kind: 'not proven', moved, feetGone }
      : { kind: 'falls', moved, proof, feetGone };
  }
}

/** Whether this much out of balance is too much. Not a number is too much. */
export const isOut = (model: Model, force: number, moment: number, inadmissible: number): boolean =>
  !(
    force <= balanceTolerance * model.force &&
    moment <= balanceTolerance * model.force * model.length &&
    inadmissible <= balanceTolerance * model.force
  );

export const outOfBalance = (force: number, moment: number, inadmissible: number): NotSolved => ({
  kind: 'not solved',
  reason: { kind: 'out of balance', force, moment, inadmissible },
});
