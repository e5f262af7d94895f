import { at } from '../resting/at.js';
import type { Outcome } from '../resting/system.js';

/**
 * Which contacts push in each case at one place in the ranges, as one number a case. The number of a stage holds those
 * of the stages before it, and that of a loss holds its stage's: where two places have the same number, every force
 * of the case changes evenly from one to the other.
 */
export interface CaseSigns {
  readonly asBuilt: Int32Array;
  readonly losses: readonly Int32Array[];
}

export const noSigns = (stages: readonly { readonly losses: readonly unknown[] }[]): CaseSigns => ({
  asBuilt: new Int32Array(stages.length),
  losses: stages.map(({ losses }) => new Int32Array(losses.length)),
});

/** The sign of what falls, or could not be worked out: no place is known to be like it. */
export const unlike = 0;

/** Notes the sign of one answer. Stages come in order, each as built before its losses. */
export function sign(
  signs: CaseSigns,
  stage: number,
  loss: number | undefined,
  rest: Outcome,
  through: readonly Outcome[] = [],
): void {
  const built = signs.asBuilt[stage] ?? unlike;
  if (loss !== undefined) {
    const losses = signs.losses[stage];
    if (losses !== undefined) losses[loss] = signOf(built, rest);
    return;
  }
  const before = stage === 0 ? 1 : (signs.asBuilt[stage - 1] ?? unlike);
  signs.asBuilt[stage] = signOf(through.reduce(signOf, before), rest);
}

/** Takes one answer into a sign. Unlike anything where it does not rest. */
function signOf(before: number, rest: Outcome): number {
  if (rest.kind !== 'rests') return unlike;
  let sign = before ^ seed;
  for (let i = 0; i < rest.forces.length; i++)
    sign = Math.imul(sign ^ (at(rest.forces, i) > 0 ? 1 : 2), prime);
  return sign === unlike ? seed : sign;
}

/** Of the FNV-1a hash. */
const seed = 0x811c9dc5 | 0;
const prime = 0x01000193;
