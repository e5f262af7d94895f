import type { Factor } from './cholesky.js';
import { factorSpace } from './cholesky.js';

/** Where along a step contacts open or close, and what that does to the slope and the bend of the energy. */
export interface Breaks {
  readonly at: Float64Array;
  readonly slope: Float64Array;
  readonly bend: Float64Array;
  /** Places in these, the nearest on top: none lies farther than the two below it. */
  readonly heap: Int32Array;
}

export const breaksFor = (count: number): Breaks => ({
  at: new Float64Array(count),
  slope: new Float64Array(count),
  bend: new Float64Array(count),
  heap: new Int32Array(count),
});

/** Room for one descent, to be used again and again. */
export interface Room {
  readonly h: Float64Array;
  readonly step: Float64Array;
  readonly left: Float64Array;
  readonly factor: Factor;
  /** Of each spring: its force before it is cut off at zero, and how fast it closes along the step. */
  readonly force: Float64Array;
  readonly rate: Float64Array;
  readonly breaks: Breaks;
  /** Answers are cut from one piece of memory: many small ones cost more than the sums. */
  readonly answers: { memory: Float64Array; used: number };
}

const answersAtOnce = 64;

/** Room for the forces of one answer, all nothing. It is not used again. */
export function answerSpace({ force, answers }: Room): Float64Array {
  const n = force.length;
  if (answers.used + n > answers.memory.length) {
    answers.memory = new Float64Array(answersAtOnce * n);
    answers.used = 0;
  }
  const space = answers.memory.subarray(answers.used, answers.used + n);
  answers.used += n;
  return space;
}

export const roomFor = (s: { readonly count: number; readonly bodies: readonly string[] }): Room => {
  const n = 3 * s.bodies.length;
  return {
    h: new Float64Array(n * n),
    step: new Float64Array(n),
    left: new Float64Array(n),
    factor: factorSpace(n),
    force: new Float64Array(s.count),
    rate: new Float64Array(s.count),
    breaks: breaksFor(s.count),
    answers: { memory: new Float64Array(0), used: 0 },
  };
};
