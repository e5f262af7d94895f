import { describe, expect, it } from 'vitest';
import { program } from './program.js';
import type { PushContact, PushSystem, Vector } from './push-system.js';
import { solveProgram } from './solve-program.js';

const down: Vector = { x: 0, y: 0, z: -1 };
const along = (angle: number): Vector => ({ x: Math.cos(angle), y: Math.sin(angle), z: 0 });

/** A block l × b × h on four corners, its centre in its middle. */
const block = (friction: number, size: { l: number; b: number; h: number }, weight = 1000): PushSystem => ({
  bodies: [{ id: 'block', weight, centre: { x: 0, y: 0, z: size.h / 2 } }],
  contacts: [-1, 1].flatMap((i) =>
    [-1, 1].map(
      (j): PushContact => ({
        id: `${i}${j}`,
        upper: 'block',
        lower: 'ground',
        at: { x: (i * size.l) / 2, y: (j * size.b) / 2, z: 0 },
        friction,
      }),
    ),
  ),
  stacks: [],
  struts: [],
  ties: [],
  loads: [],
  gravity: down,
});

const held = (system: PushSystem, angle: number, height: number) => {
  const answer = solveProgram(
    program(system, {
      body: system.bodies[0]?.id ?? '',
      at: { x: 0, y: 0, z: height },
      direction: along(angle),
    }),
  );
  if (answer.most === undefined) throw new Error(answer.why);
  expect(answer.residual).toBeLessThan(1e-9);
  return answer.most;
};

describe('a block', () => {
  // Slides at μ W, tips at W b / 2h, whichever is less: any statics text; the two-case method stands in Baker &
  // Haynes, Engineering Statics, chapter 9.
  it.each([0.1, 0.3, 0.49, 0.51, 0.8])('of friction %f slides or tips, whichever is first', (friction) => {
    const size = { l: 3, b: 1, h: 2 };
    const pushed = 1;
    for (const angle of [0, Math.PI / 2, Math.PI, -Math.PI / 2]) {
      const width = Math.abs(Math.cos(angle)) > 0.5 ? size.l : size.b;
      expect(held(block(friction, size), angle, pushed)).toBeCloseTo(
        Math.min(friction, width / 2 / pushed),
        9,
      );
    }
  });
});
