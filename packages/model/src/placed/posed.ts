import { add, exactly, type Interval, scale } from '../plan/interval.js';
import type { Part, Vehicle } from '../plan/vehicle.js';

/**
 * A vehicle as it lies, its parts where they then are: what faces the ground, and how high it is. Lengthwise places
 * stay as they are.
 *
 * On its side the roof points to the side that is down: a part at height z lies at H/2 − z across (mirrored on the
 * other side), and as high as it was across. On its roof left and right change over, and a part's top is its
 * underside. A vehicle that pitches keeps its parts; `underside` tilts their heights.
 */
export function posed(vehicle: Vehicle): Vehicle {
  switch (vehicle.position.kind) {
    case 'upright':
    case 'pitched':
      return vehicle;
    case 'on its side':
      return { ...settled(vehicle), parts: vehicle.parts.map((p) => onSide(p, vehicle)) };
    case 'on its roof':
      return { ...settled(vehicle), parts: vehicle.parts.map((p) => onRoof(p, vehicle)) };
  }
}

/** A cab that lies is no longer on its springs: it counts as one with the vehicle. */
function settled(vehicle: Vehicle): Vehicle {
  const { cab: _, ...rest } = vehicle;
  return rest;
}

/** Whether a vehicle lies on its side or roof: its body is down, and its wheels carry nothing. */
export const lies = ({ position }: Vehicle): boolean =>
  position.kind === 'on its side' || position.kind === 'on its roof';

const toward = (vehicle: Vehicle): 1 | -1 =>
  vehicle.position.kind === 'on its side' && vehicle.position.side === 'passenger' ? -1 : 1;

/** Lowest edge of a part across, above the side that is down. */
function onSide(part: Part, vehicle: Vehicle): Part {
  const way = toward(vehicle);
  const middle = (part.height.low + part.height.high) / 2 + part.depth / 2;
  const across = way * (vehicle.height / 2 - middle);
  const ends = part.offsets.map((y) => vehicle.width / 2 + way * y);
  const lowest = Math.max(0, Math.min(...ends) - (part.form === 'patch' ? 0 : part.width / 2));
  const spread = (part.height.high - part.height.low) / 2;
  const edge = part.form === 'joists' ? Math.max(0, part.depth / 2 - spread) : 0;
  return {
    ...part,
    form: part.form === 'patch' ? 'rails' : part.form,
    offsets: edge > 0 ? [across - edge, across + edge] : [across],
    // What was its depth now lies across. A height that was a range narrows it to what is there at both ends.
    width: part.form === 'joists' ? part.width : Math.max(0, part.depth - 2 * spread),
    depth: part.width,
    height: exactly(lowest),
  };
}

const onRoof = (part: Part, vehicle: Vehicle): Part => ({
  ...part,
  offsets: part.offsets.map((y) => -y).reverse(),
  height: {
    low: Math.max(0, vehicle.height - part.height.high - part.depth),
    high: Math.max(0, vehicle.height - part.height.low - part.depth),
  },
});

type Known = Interval | undefined;

/** The place of a center of gravity across and up, as the vehicle lies. */
export function posedCenter(vehicle: Vehicle, y: Known, z: Known): { readonly y: Known; readonly z: Known } {
  switch (vehicle.position.kind) {
    case 'upright':
    case 'pitched':
      return { y, z };
    case 'on its side': {
      const way = toward(vehicle);
      return {
        y: z && add(exactly((way * vehicle.height) / 2), scale(z, -way)),
        z: y && add(exactly(vehicle.width / 2), scale(y, way)),
      };
    }
    case 'on its roof':
      return { y: y && scale(y, -1), z: z && add(exactly(vehicle.height), scale(z, -1)) };
  }
}
