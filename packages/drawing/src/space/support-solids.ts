import {
  type Axle,
  type PlacedChock,
  type PlacedPad,
  type PlacedStepChock,
  type PlacedStrut,
  type PlacedTie,
  poseOf,
  stepChockSize,
  type Vehicle,
} from '@cribwright/model';
import { block, type Solid, tapered } from '../scene/solid.js';
import { at3 } from '../scene/vector.js';

/** A shaft with a plate at its foot and a head that fits the part it meets. */
export function strutSolids({ head, foot }: PlacedStrut): readonly Solid[] {
  const half = 0.13;
  return [
    { kind: 'rod', key: 'shaft', tone: 'strut', from: foot, to: head, thickness: 0.1 },
    block(
      'foot',
      'strut',
      at3(foot.x - half, foot.y - half, foot.z),
      at3(foot.x + half, foot.y + half, foot.z + 0.04),
    ),
    block(
      'head',
      'strut',
      at3(head.x - half * 0.7, head.y - half * 0.7, head.z - 0.06),
      at3(head.x + half * 0.7, head.y + half * 0.7, head.z),
    ),
  ];
}

export function tieSolids({ tie, from, to }: PlacedTie): readonly Solid[] {
  if (from === undefined || to === undefined) return [];
  const posts = [tie.from, tie.to].flatMap((end, i) =>
    end.kind === 'ground anchor' ? [post(`anchor ${i + 1}`, end)] : [],
  );
  return [{ kind: 'rod', key: 'line', tone: 'tie', from, to, thickness: 0.05 }, ...posts];
}

/** Something in the ground that a tie is anchored to, whatever it is: a tree, a bollard, pickets. */
const post = (key: string, { x, y }: { readonly x: number; readonly y: number }): Solid => ({
  kind: 'cylinder',
  key,
  tone: 'tie',
  from: at3(x, y, 0),
  to: at3(x, y, 0.45),
  radius: 0.16,
});

export function stepChockSolids({ chock, base }: PlacedStepChock): readonly Solid[] {
  const heights = chock.heights.length === 0 ? [0.1] : chock.heights;
  const { length: long, width } = stepChockSize;
  const run = long / heights.length;
  const ground = base?.low ?? 0;
  return heights.map((height, i) =>
    block(
      `step ${i + 1}`,
      'timber',
      at3(chock.at.x - long / 2 + i * run, chock.at.y - width / 2, ground),
      at3(chock.at.x - long / 2 + (i + 1) * run, chock.at.y + width / 2, ground + height),
    ),
  );
}

/** Wedge-shaped blocks against the wheels of the axle that is chocked, on both sides. */
export function chockSolids({ chock, vehicle, axle }: PlacedChock): readonly Solid[] {
  if (vehicle === undefined || axle === undefined) return [];
  const ways = chock.ways === 'both' ? [-1, 1] : chock.ways === 'forward' ? [-1] : [1];
  return [-1, 1].flatMap((side) => ways.map((way) => wheelChock(vehicle, axle, side, way)));
}

function wheelChock(vehicle: Vehicle, axle: Axle, side: number, way: number): Solid {
  const small = vehicle.height < 2.2;
  const near = axle.x + way * (small ? 0.24 : 0.36);
  const far = near + way * (small ? 0.28 : 0.4);
  const y = (side * axle.track) / 2;
  const half = small ? 0.1 : 0.14;
  const pose = poseOf(vehicle);
  const top = small ? 0.16 : 0.26;
  const shape = tapered(
    `${side < 0 ? 'driver' : 'passenger'} ${way < 0 ? 'front' : 'rear'}`,
    'chock',
    { x: [near, far], y: [y - half, y + half], z: 0 },
    { x: [near, near + way * 0.04], y: [y - half, y + half], z: top },
  );
  return shape.kind === 'block' ? { ...shape, corners: shape.corners.map(pose) } : shape;
}

export function padSolids({ pad, at }: PlacedPad): readonly Solid[] {
  if (at === undefined) return [];
  const [a, b] = [pad.length / 2, pad.width / 2];
  return [block('pad', 'pad', at3(at.x - a, at.y - b, 0), at3(at.x + a, at.y + b, pad.thickness))];
}
