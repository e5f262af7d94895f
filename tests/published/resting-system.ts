import type { Rest, RestingSystem } from '@cribwright/engine';

/** One body on springs of the ground; places in m. */
export const onGround = (
  weight: number,
  center: readonly [number, number],
  springs: readonly (readonly [x: number, y: number, stiffness?: number])[],
): RestingSystem => ({
  bodies: [{ id: 'body', weight, x: center[0], y: center[1] }],
  springs: springs.map(([x, y, stiffness = 1e6], i) => ({
    id: `${i}`,
    upper: 'body',
    lower: 'ground',
    x,
    y,
    stiffness,
  })),
});

/** What spring `index` carries; no number where the body does not rest. */
export const force = (result: Rest, index: number): number =>
  result.kind === 'rests' ? (result.forces[index] ?? Number.NaN) : Number.NaN;
