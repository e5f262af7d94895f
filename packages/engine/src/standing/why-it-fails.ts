import { type Outcome, type Scene, type State, settle } from '../statics/index.js';
import { holdAll } from './hold-all.js';
import type { CaseOf, StandingFailure } from './standing.js';

/**
 * Names a failure by what would prevent it: wheels that cannot turn, then friction without limit. `undefined` where it
 * rests.
 *
 * @param state from which it was let go.
 */
export function* whyItFails(
  scene: Scene,
  state: State,
  outcome: Outcome,
  of: CaseOf,
): Generator<void, StandingFailure | undefined> {
  if (outcome.kind === 'rests') return undefined;
  if (outcome.kind === 'not solved') return { ...of, kind: 'not solved', moved: [] };
  const { moved } = outcome;
  const braked = yield* settle(holdAll(scene, 'wheels'), state);
  if (braked.kind === 'rests') return { ...of, kind: 'rolls', moved };
  const rough = yield* settle(holdAll(scene, 'everything'), state);
  if (rough.kind === 'rests') return { ...of, kind: 'slides', moved };
  return { ...of, kind: outcome.kind === 'falls' ? 'falls' : 'moves too far', moved };
}
