import type { Part, Vehicle } from '../model/vehicle.js';
import { type Point, stepToPlan, toPlan, toVehicle } from './frame.js';

/** How a place stands to the nearest piece of a part: under it, or so far off. */
export interface PartPlace {
  /** Nearest point of the piece's centre line, plan axes. */
  readonly at: Point;
  /** From the place to the nearest edge of the piece, plan axes. Zero in the direction in which it is covered. */
  readonly off: Point;
  /** Which piece, from 1: joist 14, rail 2. */
  readonly number: number;
}

interface Piece {
  readonly from: Point;
  readonly to: Point;
}

/** The pieces of a part as rectangles in vehicle axes. */
export function pieces(part: Part): readonly Piece[] {
  const half = part.width / 2;
  const low = Math.min(...part.offsets);
  const high = Math.max(...part.offsets);
  switch (part.form) {
    case 'rails':
      return part.offsets.map((y) => ({
        from: { x: part.from, y: y - half },
        to: { x: part.to, y: y + half },
      }));
    case 'crossmembers':
      return crossings(part).map((x) => ({
        from: { x: x - half, y: low },
        to: { x: x + half, y: high },
      }));
    case 'patch':
      return [{ from: { x: part.from, y: low }, to: { x: part.to, y: high } }];
    case 'points':
      return part.offsets.map((y) => ({
        from: { x: part.from - half, y: y - half },
        to: { x: part.from + half, y: y + half },
      }));
  }
}

/** Where the crossmembers of a part stand, vehicle axes. Without a spacing only the two ends are known. */
export function crossings(part: Part): readonly number[] {
  const spacing = part.spacing ?? part.to - part.from;
  if (!(spacing > 0)) return [part.from];
  const most = Math.min(2000, Math.floor((part.to - part.from) / spacing + 1e-9));
  return Array.from({ length: most + 1 }, (_, i) => part.from + i * spacing);
}

const beyond = (value: number, low: number, high: number) =>
  value < low ? low - value : value > high ? high - value : 0;
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** The piece of a part nearest to a place in plan axes. `undefined` for a part without pieces. */
export function placeAt(vehicle: Vehicle, part: Part, point: Point): PartPlace | undefined {
  const p = toVehicle(vehicle, point);
  let best: { distance: number; place: PartPlace } | undefined;
  pieces(part).forEach((piece, index) => {
    const off = {
      x: beyond(p.x, piece.from.x, piece.to.x),
      y: beyond(p.y, piece.from.y, piece.to.y),
    };
    const distance = Math.hypot(off.x, off.y);
    if (best !== undefined && best.distance <= distance) return;
    best = {
      distance,
      place: {
        at: toPlan(vehicle, centreLine(part, piece, p)),
        off: stepToPlan(vehicle, off),
        number: index + 1,
      },
    };
  });
  return best?.place;
}

function centreLine(part: Part, { from, to }: Piece, p: Point): Point {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  switch (part.form) {
    case 'rails':
      return { x: clamp(p.x, from.x, to.x), y: middle.y };
    case 'crossmembers':
      return { x: middle.x, y: clamp(p.y, from.y, to.y) };
    case 'patch':
      return { x: clamp(p.x, from.x, to.x), y: clamp(p.y, from.y, to.y) };
    case 'points':
      return middle;
  }
}

export const partNamed = (vehicle: Vehicle, name: string): Part | undefined =>
  vehicle.parts.find((p) => p.id === name) ?? vehicle.parts.find((p) => p.name === name);
