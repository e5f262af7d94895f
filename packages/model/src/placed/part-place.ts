import type { Part, Vehicle } from '../plan/vehicle.js';
import { type PlanPoint, stepToPlan, toPlan, toVehicle } from './frame.js';

/** How a place stands to the nearest piece of a part: under it, or so far off. */
export interface PartPlace {
  /** Nearest point of the piece's center line, plan axes. */
  readonly at: PlanPoint;
  /** From the place to the nearest edge of the piece, plan axes. Zero in the direction in which it is covered. */
  readonly off: PlanPoint;
  /** Which piece, from 1: joist 14, rail 2. */
  readonly number: number;
}

interface Piece {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
}

/** How many pieces a part has. */
function pieceCount(part: Part): number {
  switch (part.form) {
    case 'rails':
    case 'points':
      return part.offsets.length;
    case 'joists':
      return rowOf(part).count;
    case 'patch':
      return 1;
  }
}

/** Piece `i` of a part, from 0, as a rectangle in vehicle axes. */
function pieceOf(part: Part, i: number): Piece {
  const half = part.width / 2;
  const y = part.offsets[i] ?? 0;
  switch (part.form) {
    case 'rails':
      return { from: { x: part.from, y: y - half }, to: { x: part.to, y: y + half } };
    case 'joists': {
      const x = part.from + i * rowOf(part).spacing;
      return {
        from: { x: x - half, y: Math.min(...part.offsets) },
        to: { x: x + half, y: Math.max(...part.offsets) },
      };
    }
    case 'patch':
      return {
        from: { x: part.from, y: Math.min(...part.offsets) },
        to: { x: part.to, y: Math.max(...part.offsets) },
      };
    case 'points':
      return {
        from: { x: part.from - half, y: y - half },
        to: { x: part.from + half, y: y + half },
      };
  }
}

/** The pieces of a part as rectangles in vehicle axes. */
export const pieces = (part: Part): readonly Piece[] =>
  Array.from({ length: pieceCount(part) }, (_, i) => pieceOf(part, i));

/** More crossmembers than this are not looked at. */
const mostPieces = 2001;

/** Crossmembers evenly spaced. Without a spacing only the two ends are known. */
function rowOf(part: Part): { readonly spacing: number; readonly count: number } {
  const spacing = part.spacing ?? part.to - part.from;
  if (!(spacing > 0)) return { spacing: 0, count: 1 };
  const count = Math.floor((part.to - part.from) / spacing + 1e-9) + 1;
  return { spacing, count: Math.max(0, Math.min(mostPieces, count)) };
}

/** Where the crossmembers of a part stand, vehicle axes. */
export function crossings(part: Part): readonly number[] {
  const { spacing, count } = rowOf(part);
  return Array.from({ length: count }, (_, i) => part.from + i * spacing);
}

const beyond = (value: number, low: number, high: number) =>
  value < low ? low - value : value > high ? high - value : 0;
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** The piece of a part nearest to a place in plan axes. `undefined` for a part without pieces. */
export function placeAt(vehicle: Vehicle, part: Part, point: PlanPoint): PartPlace | undefined {
  const p = toVehicle(vehicle, point);
  let best: { distance: number; off: PlanPoint; piece: Piece; number: number } | undefined;
  const [first, last] = nearOnes(part, p.x);
  for (let i = first; i <= last; i++) {
    const piece = pieceOf(part, i);
    const off = {
      x: beyond(p.x, piece.from.x, piece.to.x),
      y: beyond(p.y, piece.from.y, piece.to.y),
    };
    const distance = Math.hypot(off.x, off.y);
    if (best === undefined || distance < best.distance) best = { distance, off, piece, number: i + 1 };
  }
  return (
    best && {
      at: toPlan(vehicle, centerLine(part, best.piece, p)),
      off: stepToPlan(vehicle, best.off),
      number: best.number,
    }
  );
}

/** The pieces among which the nearest is: of evenly spaced ones, those about the place; of others, all. */
function nearOnes(part: Part, x: number): readonly [first: number, last: number] {
  const end = pieceCount(part) - 1;
  const { spacing } = rowOf(part);
  if (part.form !== 'joists' || !(spacing > 0)) return [0, end];
  // The first one that ends behind the place, or the one before it; one more on each side for rounding.
  const behind = Math.ceil((x - part.width / 2 - part.from) / spacing);
  return [Math.max(0, Math.min(end, behind - 2)), Math.min(end, Math.max(0, behind + 1))];
}

function centerLine(part: Part, { from, to }: Piece, p: PlanPoint): PlanPoint {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  switch (part.form) {
    case 'rails':
      return { x: clamp(p.x, from.x, to.x), y: middle.y };
    case 'joists':
      return { x: middle.x, y: clamp(p.y, from.y, to.y) };
    case 'patch':
      return { x: clamp(p.x, from.x, to.x), y: clamp(p.y, from.y, to.y) };
    case 'points':
      return middle;
  }
}

/** The part of a vehicle by its id, else by its name. `undefined` where it has no such part. */
export const partNamed = (vehicle: Vehicle, name: string): Part | undefined =>
  vehicle.parts.find((p) => p.id === name) ?? vehicle.parts.find((p) => p.name === name);
