import {
  bodyTop,
  crossmemberPlaces,
  type Part,
  type PlacedVehicle,
  poseOf,
  type Vehicle,
} from '@cribwright/model';
import { isCoupling } from '@cribwright/model/internal';
import { block, moved, type Solid, tapered } from '../scene/solid.js';
import { at3 } from '../scene/vector.js';
import { pointsOf } from './project.js';

/**
 * A vehicle in space. Parts that supports meet, the roof and the wheels are where the plan says; the rest of the body's
 * outline is for recognition only.
 */
export function vehicleSolids({ given: vehicle, wheels }: PlacedVehicle): readonly Solid[] {
  const pose = poseOf(vehicle);
  const upright = vehicle.position.kind === 'upright';
  const floor = Math.min(
    ...vehicle.parts.filter((p) => p.form === 'rails' || p.form === 'joists').map((p) => p.height.low),
  );
  const body = [...bodySolids(vehicle), ...vehicle.parts.flatMap((p) => partSolids(p, upright, floor))];
  return [...body.flatMap((s) => aboveGround(moved(s, pose))), ...wheels.flatMap(wheelSolids)];
}

/** What a body that lies or pitches would push into the ground is cut off there: it has given way. */
function aboveGround(solid: Solid): readonly Solid[] {
  const lowest = Math.min(...pointsOf(solid).map((p) => p.z));
  if (lowest > -1e-6) return [solid];
  if (solid.kind !== 'block') return [solid];
  if (solid.corners.every((p) => p.z <= 0)) return [];
  return [{ ...solid, corners: solid.corners.map((p) => (p.z < 0 ? { ...p, z: 0 } : p)) }];
}

const isCar = (v: Vehicle): boolean => v.length < 6.5 && v.height < 2.2;

export function bodySolids(v: Vehicle): readonly Solid[] {
  const w = v.width / 2;
  if (isCar(v)) return carSolids(v);
  const floor = v.parts.find((p) => p.form === 'joists');
  if (floor === undefined) return v.cab === undefined ? [wholeBody(v)] : [hood(v, v.cab.from), cabBlock(v)];
  // A trailer has no axle near its front; whatever has one has a cab over it.
  const steered = v.axles.some((a) => a.x < v.length * 0.35);
  const from = floor.from < 1.2 || !steered ? 0 : floor.from;
  const to = v.length - floor.to < 1.2 ? v.length : floor.to;
  const box = block(
    'body',
    'vehicle',
    at3(from, -w, floor.height.low + floor.depth),
    at3(to, w, bodyTop(v).low),
  );
  if (from === 0) return [box];
  const front = v.cab === undefined ? [frontCab(v, from - 0.15)] : [hood(v, v.cab.from), cabBlock(v)];
  return [...front, box];
}

const wholeBody = (v: Vehicle): Solid =>
  block('body', 'vehicle', at3(0, -v.width / 2, lowest(v)), at3(v.length, v.width / 2, bodyTop(v).low));

const lowest = (v: Vehicle): number =>
  Math.min(v.height * 0.3, ...v.parts.map((p) => p.height.low).filter((z) => z > 0));

const frontCab = (v: Vehicle, to: number): Solid => {
  const w = Math.min(v.width / 2, 1.2);
  const top = Math.min(v.height * 0.85, 2.7);
  return tapered(
    'cab',
    'vehicle',
    { x: [0, to], y: [-w, w], z: 0.55 },
    { x: [Math.min(0.9, to / 2), to], y: [-w, w], z: top },
  );
};

const hood = (v: Vehicle, to: number): Solid => {
  const w = Math.min(v.width / 2, 1.0);
  return tapered(
    'hood',
    'vehicle',
    { x: [0, to], y: [-w, w], z: 0.55 },
    { x: [0.25, to], y: [-w, w], z: 1.75 },
  );
};

const cabBlock = (v: Vehicle): Solid => {
  const cab = v.cab ?? { from: 0, to: v.length / 3 };
  const w = Math.min(v.width / 2, 1.2);
  const floor = v.parts.find((p) => p.moves)?.height.low ?? 1.2;
  return tapered(
    'cab',
    'vehicle',
    { x: [cab.from, cab.to], y: [-w, w], z: floor },
    { x: [cab.from + 0.35, cab.to], y: [-w, w], z: v.height },
  );
};

/** A car: its body, and a narrower roof over it that may have been pressed down to where its roof part is. */
function carSolids(v: Vehicle): readonly Solid[] {
  const w = v.width / 2;
  const roof = v.parts.find((p) => p.id === 'roof');
  const top = bodyTop(v).low;
  const sill = Math.min(0.2, top / 3);
  const belt = Math.min(v.height * 0.62, top * 0.9);
  const [from, to] = roof === undefined ? [v.length * 0.3, v.length * 0.75] : [roof.from, roof.to];
  return [
    tapered(
      'body',
      'vehicle',
      { x: [0.05, v.length - 0.05], y: [-w, w], z: sill },
      { x: [0.15, v.length - 0.1], y: [-w * 0.96, w * 0.96], z: belt },
    ),
    tapered(
      'roof',
      'vehicle',
      {
        x: [Math.max(0.2, from - 0.5), Math.min(v.length - 0.2, to + 0.4)],
        y: [-w * 0.92, w * 0.92],
        z: belt,
      },
      { x: [from, to], y: [-w * 0.78, w * 0.78], z: top },
    ),
  ];
}

/** Rails, joists and the other pieces that a support can meet. What hangs from the floor, `floor` m up, reaches to it. */
export function partSolids(part: Part, upright: boolean, floor: number): readonly Solid[] {
  const low = part.height.low;
  const high = low + part.depth;
  const half = part.width / 2;
  const sorted = [...part.offsets].sort((a, b) => a - b);
  const [first, last] = [sorted[0] ?? 0, sorted.at(-1) ?? 0];
  switch (part.form) {
    case 'rails':
      return sorted.map((y, i) =>
        block(`${part.id} ${i + 1}`, 'part', at3(part.from, y - half, low), at3(part.to, y + half, high)),
      );
    case 'joists':
      return crossmemberPlaces(part).map((x, i) =>
        block(`${part.id} ${i + 1}`, 'part', at3(x - half, first, low), at3(x + half, last, high)),
      );
    case 'patch':
      return [block(part.id, 'part', at3(part.from, first, low), at3(part.to, last, low + 0.02))];
    case 'points':
      return sorted.map((y, i) =>
        block(
          `${part.id} ${i + 1}`,
          'part',
          at3(
            part.from - half,
            y - half,
            upright && part.carries?.down === true && !isCoupling(part) ? 0 : low,
          ),
          at3(part.from + half, y + half, Math.max(high, low + 0.05, Number.isFinite(floor) ? floor : 0)),
        ),
      );
  }
}

const wheelSolids = ({ axle, side, tires, radius }: PlacedVehicle['wheels'][number]): readonly Solid[] =>
  tires.map(({ from, to }, i) => ({
    kind: 'cylinder',
    key: `${axle.id} ${side} ${i + 1}`,
    tone: 'chock',
    from,
    to,
    radius,
  }));
