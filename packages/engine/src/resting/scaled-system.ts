import { indexAt } from './at.js';
import { type Room, roomFor } from './room.js';
import type { RestingSystem } from './system.js';

/**
 * The same system in numbers near one: forces over all weight, stiffness over the greatest, each body's
 * coordinates about the middle of its contacts over their reach. Unscaled, the equations lose half their digits.
 */
export interface ScaledSystem {
  readonly bodies: readonly string[];
  readonly count: number;
  /** Index of the body above and below; -1 is the ground. */
  readonly upper: Int32Array;
  readonly lower: Int32Array;
  /** Six lever entries a spring: (1, x, y) about the upper body, and the same about the lower. */
  readonly levers: Float64Array;
  readonly stiffness: Float64Array;
  /** Weight and moments of each body, three entries a body. */
  readonly load: Float64Array;
  readonly frames: readonly { readonly x: number; readonly y: number; readonly reach: number }[];
  /** N that one unit of force stands for, and m that one unit of sinking stands for. */
  readonly force: number;
  readonly length: number;
  readonly room: Room;
}

export function scaledSystem(system: RestingSystem): ScaledSystem {
  const index = new Map(system.bodies.map((b, i) => [b.id, i]));
  const frames = system.bodies.map((body) => frameOf(body.id, system));
  const force = system.bodies.reduce((sum, b) => sum + b.weight, 0) || 1;
  const stiffest = system.springs.reduce((most, s) => Math.max(most, s.stiffness), 0) || 1;
  const n = system.springs.length;
  const upper = new Int32Array(n);
  const lower = new Int32Array(n);
  const levers = new Float64Array(6 * n);
  const stiffness = new Float64Array(n);
  system.springs.forEach((s, i) => {
    // Between two parts of one body nothing closes, whatever moves: it holds its preload, and the body by nothing.
    const within = s.upper === s.lower;
    upper[i] = within ? -1 : (index.get(s.upper) ?? -1);
    lower[i] = within || s.lower === 'ground' ? -1 : (index.get(s.lower) ?? -1);
    stiffness[i] = s.stiffness / stiffest;
    for (const [side, body] of [indexAt(upper, i), indexAt(lower, i)].entries()) {
      const frame = frames[body];
      if (frame === undefined) continue;
      levers[6 * i + 3 * side] = 1;
      levers[6 * i + 3 * side + 1] = (s.x - frame.x) / frame.reach;
      levers[6 * i + 3 * side + 2] = (s.y - frame.y) / frame.reach;
    }
  });
  const scaled = {
    bodies: system.bodies.map((b) => b.id),
    count: n,
    upper,
    lower,
    levers,
    stiffness,
    load: new Float64Array(3 * system.bodies.length),
    frames,
    force,
    length: force / stiffest,
    room: roomFor({ count: n, bodies: system.bodies.map((b) => b.id) }),
  };
  scaled.load.set(scaledLoad(scaled, system.bodies));
  return scaled;
}

/** The load vector of the same bodies with other weights or places. */
export function scaledLoad(
  scaled: Pick<ScaledSystem, 'frames' | 'force'>,
  bodies: readonly { readonly weight: number; readonly x: number; readonly y: number }[],
): Float64Array {
  const load = new Float64Array(3 * bodies.length);
  bodies.forEach((b, i) => {
    const frame = scaled.frames[i] ?? { x: 0, y: 0, reach: 1 };
    const w = b.weight / scaled.force;
    load[3 * i] = w;
    load[3 * i + 1] = (w * (b.x - frame.x)) / frame.reach;
    load[3 * i + 2] = (w * (b.y - frame.y)) / frame.reach;
  });
  return load;
}

function frameOf(body: string, { springs }: RestingSystem) {
  const mine = springs.filter((s) => s.upper === body || s.lower === body);
  if (mine.length === 0) return { x: 0, y: 0, reach: 1 };
  const [left, right] = endsOf(mine.map((s) => s.x));
  const [near, far] = endsOf(mine.map((s) => s.y));
  const x = (left + right) / 2;
  const y = (near + far) / 2;
  const reach = Math.max(right - x, far - y);
  // Contacts nearer to each other than this, m, are one place.
  return { x, y, reach: reach > 1e-6 ? reach : 1 };
}

/** Without a limit on how many: arguments have one. */
const endsOf = (values: readonly number[]): readonly [least: number, most: number] => [
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
];
