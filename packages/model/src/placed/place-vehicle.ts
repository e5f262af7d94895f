import { inch } from '@cribwright/units';
import { exactly, type Interval } from '../plan/interval.js';
import type { Axle, Vehicle } from '../plan/vehicle.js';
import { type PlanPoint, type Point3, toPlan } from './frame.js';
import { type Extent, rectangle } from './outline.js';
import { poseOf, tilted } from './pose.js';
import { posed } from './posed.js';

/** A vehicle as it lies, with the room that it takes. */
export interface PlacedVehicle {
  /** As the plan describes it, upright. */
  readonly given: Vehicle;
  /** As it lies: its parts where they then are. */
  readonly vehicle: Vehicle;
  /** Its highest point over the ground, m: the roof where the plan says that it is, however the body was before. */
  readonly top: Interval;
  /** The body from the lowest of its long parts up; cribs stand in the room below that. */
  readonly extent: Extent;
  /**
   * What of that room is solid for certain. Where a car has a roof, the roof is; in front of it and behind it, only what
   * is no higher than the tires.
   */
  readonly solids: readonly Extent[];
  /** Wheels that are there, axle by axle, driver side first. */
  readonly wheels: readonly PlacedWheel[];
}

/** The wheels at one end of an axle. */
export interface PlacedWheel {
  readonly axle: Axle;
  readonly side: 'driver' | 'passenger';
  /** Where they stand on the ground while the vehicle stands on its wheels, plan axes. */
  readonly at: PlanPoint;
  /** Each tire from the middle of one face to the middle of the other, plan axes. Two where the axle has duals. */
  readonly tires: readonly { readonly from: Point3; readonly to: Point3 }[];
  /** m */
  readonly radius: number;
  /** Taken small: what it finds really is in the way. */
  readonly extent: Extent;
}

/** Places a vehicle as it lies: upright, pitched, on its side or on its roof. Plan axes, m. */
export function placeVehicle(given: Vehicle): PlacedVehicle {
  const vehicle = posed(given);
  const long = vehicle.parts.filter((p) => p.form !== 'points').map((p) => p.height.low);
  const top = topOf(given);
  const extent: Extent = {
    element: given.id,
    outline: rectangle(
      toPlan(given, { x: given.length / 2, y: 0 }),
      given.length,
      given.position.kind === 'on its side' ? given.height : given.width,
      given.heading,
    ),
    low: long.length > 0 ? Math.min(...long) : 8 * inch,
    high: top.high,
  };
  return {
    given,
    vehicle,
    top,
    extent,
    solids: solidsOf(given, extent),
    wheels: given.axles.flatMap((axle) =>
      (['driver', 'passenger'] as const)
        .filter((side) => !axle.missing.includes(side))
        .map((side) => wheelOf(given, axle, side)),
    ),
  };
}

function solidsOf(vehicle: Vehicle, whole: Extent): readonly Extent[] {
  const roof = roofOf(vehicle);
  if (roof === undefined || vehicle.position.kind !== 'upright') return [whole];
  const [left, right] = [Math.min(...roof.offsets), Math.max(...roof.offsets)];
  const middle = toPlan(vehicle, { x: (roof.from + roof.to) / 2, y: (left + right) / 2 });
  const tires = vehicle.axles.map((a) => tireSize(a).high);
  const lowest = tires.length > 0 ? Math.min(...tires) : whole.low;
  return [
    {
      ...whole,
      outline: rectangle(middle, roof.to - roof.from, right - left, vehicle.heading),
      high: roof.height.low,
    },
    { ...whole, high: Math.min(whole.high, lowest) },
  ];
}

const roofOf = (vehicle: Vehicle) => vehicle.parts.find((p) => p.form === 'patch' && p.id === 'roof');

/** How high the body is upright: up to its roof where the plan gives one, crushed or not; else its stated height. */
export const bodyTop = (vehicle: Vehicle): Interval => roofOf(vehicle)?.height ?? exactly(vehicle.height);

function topOf(vehicle: Vehicle): Interval {
  const upright = bodyTop(vehicle);
  const { position } = vehicle;
  switch (position.kind) {
    case 'upright':
      return upright;
    case 'pitched': {
      // The higher end, nose or tail.
      const x = position.angle > 0 ? vehicle.length : 0;
      return {
        low: tilted(vehicle, position.angle, { x, z: upright.low }),
        high: tilted(vehicle, position.angle, { x, z: upright.high }),
      };
    }
    case 'on its side':
      return exactly(vehicle.width);
    case 'on its roof':
      return exactly(vehicle.height);
  }
}

/** Tires of a car are about 25 in, of a truck about 40 in high; as wide as 8 and 10 in. From memory. */
const tireSize = (axle: Axle) =>
  axle.tiresEachSide === 2 || axle.track > 74 * inch
    ? { high: 40 * inch, wide: 10 * inch }
    : { high: 25 * inch, wide: 8 * inch };

/** Between the middles of two duals: about 13.4 in. From memory. */
const dualSpacing = 0.34;

function wheelOf(vehicle: Vehicle, axle: Axle, side: PlacedWheel['side']): PlacedWheel {
  const { high, wide } = tireSize(axle);
  const radius = high / 2;
  const y = ((side === 'driver' ? -1 : 1) * axle.track) / 2;
  const at = toPlan(vehicle, { x: axle.x, y });
  const places = axle.tiresEachSide === 2 ? [-dualSpacing / 2, dualSpacing / 2] : [0];
  return {
    axle,
    side,
    at,
    tires: places.map((off) => tireOf(vehicle, axle.x, y + off, wide, radius)),
    radius,
    extent: {
      element: vehicle.id,
      outline: rectangle(at, 0.7 * high, wide * axle.tiresEachSide, vehicle.heading),
      low: 0,
      high,
    },
  };
}

/** No tire stands in the ground: one that a pitched body would push into it stands on it. */
function tireOf(vehicle: Vehicle, x: number, y: number, wide: number, radius: number) {
  const pose = poseOf(vehicle);
  const from = pose({ x, y: y - wide / 2, z: radius });
  const to = pose({ x, y: y + wide / 2, z: radius });
  const upright = from.z === to.z;
  const lift = Math.max(0, (upright ? radius : 0) - Math.min(from.z, to.z));
  return { from: { ...from, z: from.z + lift }, to: { ...to, z: to.z + lift } };
}
