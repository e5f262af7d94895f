import type { Anchor, Axle, Chock, Pad, Plan, StepChock, Strut, Tie, Vehicle } from '@cribwright/engine';
import { poseOf } from './pose.js';
import { block, type Solid, tapered } from './solid.js';
import { at3, type Point3 } from './vector.js';

export const strutHead = (strut: Strut): Point3 => at3(strut.head.x, strut.head.y, strut.head.z.low);

export const strutFoot = (strut: Strut, plan: Plan): Point3 =>
  at3(
    strut.foot.x,
    strut.foot.y,
    plan.pads.find((p) => p.id === strut.foot.pad || p.under === strut.id)?.thickness ?? 0,
  );

/** A shaft with a plate at its foot and a head that fits the part it meets. */
export function strutSolids(strut: Strut, plan: Plan): readonly Solid[] {
  const [head, foot] = [strutHead(strut), strutFoot(strut, plan)];
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

/** Where a tie is anchored; `undefined` where the plan names something that is not there. */
export function anchorPoint(anchor: Anchor, plan: Plan): Point3 | undefined {
  switch (anchor.kind) {
    case 'strut base':
    case 'strut head': {
      const strut = plan.struts.find((s) => s.id === anchor.strut);
      if (strut === undefined) return undefined;
      if (anchor.kind === 'strut head') return strutHead(strut);
      const foot = strutFoot(strut, plan);
      return at3(foot.x, foot.y, foot.z + 0.06);
    }
    case 'vehicle part':
      return at3(anchor.x, anchor.y, anchor.z);
    case 'ground anchor':
      return at3(anchor.x, anchor.y, 0);
  }
}

export function tieSolids(tie: Tie, plan: Plan): readonly Solid[] {
  const [from, to] = [anchorPoint(tie.from, plan), anchorPoint(tie.to, plan)];
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

export function stepChockSolids(chock: StepChock): readonly Solid[] {
  const heights = chock.heights.length === 0 ? [0.1] : chock.heights;
  const long = 0.6;
  const run = long / heights.length;
  return heights.map((height, i) =>
    block(
      `step ${i + 1}`,
      'timber',
      at3(chock.at.x - long / 2 + i * run, chock.at.y - 0.12, 0),
      at3(chock.at.x - long / 2 + (i + 1) * run, chock.at.y + 0.12, height),
    ),
  );
}

/** Wedge-shaped blocks against the wheels of the axle that is chocked, on both sides. */
export function chockSolids(chock: Chock, plan: Plan): readonly Solid[] {
  const vehicle = plan.vehicles.find((v) => v.id === chock.vehicle);
  if (vehicle === undefined) return [];
  const axle =
    vehicle.axles.find((a) => a.id === chock.axle || a.name === chock.axle) ?? vehicle.axles.at(-1);
  if (axle === undefined) return [];
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

export function padSolids(pad: Pad, plan: Plan): readonly Solid[] {
  const crib = plan.cribs.find(
    (c) => c.id === pad.under || (c.standsOn.kind === 'pad' && c.standsOn.pad === pad.id),
  );
  const strut = plan.struts.find((s) => s.id === pad.under || s.foot.pad === pad.id);
  const center = crib?.at ?? strut?.foot;
  if (center === undefined) return [];
  const [a, b] = [pad.length / 2, pad.width / 2];
  return [
    block('pad', 'pad', at3(center.x - a, center.y - b, 0), at3(center.x + a, center.y + b, pad.thickness)),
  ];
}
