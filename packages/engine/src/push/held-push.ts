import { type Counted, program } from './program.js';
import { withForces } from './program-forces.js';
import type { Program } from './push-program.js';
import type { Push, PushSystem } from './push-system.js';
import { type Answer, solveProgram } from './solve-program.js';
import { type Gives, whatGives } from './what-gives.js';

/** How hard a push in one direction the system holds. */
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
      /** Largest force left over in the equations of equilibrium, as a share of all weight. */
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
  return read(system, push, p, solveProgram(p.lp));
}

/**
 * The same for systems that differ in weights and loads alone: each starts from the answer before it. Stops after
 * the first that does not hold.
 */
export function* heldPushes(
  cases: Iterable<{ readonly system: PushSystem; readonly push: Push }>,
  counted: Counted = 'resisting',
): Generator<HeldPush> {
  let before: { readonly p: Program; readonly found: Answer } | undefined;
  for (const { system, push } of cases) {
    const p = before === undefined ? program(system, push, counted) : withForces(before.p, system, push);
    const state = before?.found.most === undefined ? undefined : before.found.state;
    const found = solveProgram(p.lp, state);
    const held = read(system, push, p, found);
    yield held;
    if (held.kind !== 'holds') return;
    before = { p, found };
  }
}

function read(system: PushSystem, push: Push, p: Program, found: Answer): HeldPush {
  if (found.most === undefined) return { kind: found.why };
  return {
    kind: 'holds',
    share: (found.most * p.force) / system.bodies.reduce((sum, b) => sum + b.weight, 0),
    force: found.most * p.force,
    gives: found.motion === undefined ? undefined : whatGives(system, push.body, p, found.motion),
    proven: found.motion !== undefined,
    residual: found.residual,
  };
}
