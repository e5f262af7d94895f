import { program } from './program.js';
import type { Push, PushSystem } from './push-system.js';
import { solveProgram } from './solve-program.js';
import { type Gives, whatGives } from './what-gives.js';

export type HeldPush =
  | {
      readonly kind: 'holds';
      /** Largest push that an equilibrium exists for, as a share of the weight of all bodies together. */
      readonly share: number;
      /** The same, N. */
      readonly force: number;
      readonly gives: Gives | undefined;
      /** Bounded from above by a motion that was checked. */
      readonly proven: boolean;
      readonly residual: number;
    }
  /** Proven: no forces within friction and capacities hold it in this direction, however small the push. */
  | { readonly kind: 'cannot stand' }
  /** Neither a solution nor a proof. Never to be shown as passed. */
  | { readonly kind: 'unsolved' };

/**
 * The largest push in one direction that an equilibrium exists for: a lower bound of limit analysis, one linear
 * program.
 */
export function heldPush(system: PushSystem, push: Push): HeldPush {
  const p = program(system, push);
  const found = solveProgram(p);
  if (found.most === undefined) return { kind: found.why };
  return {
    kind: 'holds',
    share: found.most,
    force: found.most * p.force,
    gives: found.motion === undefined ? undefined : whatGives(system, push.body, p, found.motion),
    proven: found.motion !== undefined,
    residual: found.residual,
  };
}
