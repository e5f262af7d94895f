import { type PushResult, push } from './push.js';
import type { Push, Scene } from './scene.js';
import type { State } from './state.js';

/** One push of a rose. */
export interface RosePush {
  /** rad, from +x toward +y. */
  readonly bearing: number;
  readonly result: PushResult;
}

/**
 * Pushes level from every side, each time from the same state.
 *
 * @param directions how many, evenly round, from +x on.
 */
export function* pushRose(
  scene: Scene,
  state: State,
  { body, at }: Pick<Push, 'body' | 'at'>,
  directions = 24,
): Generator<void, readonly RosePush[]> {
  const rose: RosePush[] = [];
  for (let i = 0; i < directions; i++) {
    const bearing = (2 * Math.PI * i) / directions;
    const direction = { x: Math.cos(bearing), y: Math.sin(bearing), z: 0 };
    rose.push({ bearing, result: yield* push(scene, state, { body, at, direction }) });
  }
  return rose;
}
