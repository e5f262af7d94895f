import type { Message } from '@cribwright/messages';
import type { ElementId, Part, Ref, Strut, SupportKind, Vehicle } from '@cribwright/model';
import { inch, poundForce } from '@cribwright/units';

/** Supports that hold a body up. A tie only pulls, chocks keep a wheel from rolling, a pad spreads the load of another. */
export type BearingKind = Exclude<SupportKind, 'tie' | 'chock' | 'pad'>;

/** A place where one body rests on another or on the ground, as a one-way spring. Plan axes, SI. */
export interface SupportPoint {
  /** The id of its reaction: `crib/A#1`, `vehicle/trailer/axle 2/driver`. */
  readonly id: string;
  /** The element that it belongs to, and that is lost when it gives way. */
  readonly element: ElementId;
  readonly label: Message;
  readonly kind: 'tire' | 'part' | 'body' | 'vehicle' | 'cab mount' | BearingKind;
  /** There before the crew. */
  readonly original: boolean;
  /** Points that are lost together: an axle's air springs, both tires of a pair. */
  readonly group: string;
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  readonly upper: ElementId;
  readonly lower: ElementId | 'ground';
  /** Vertical, N/m. */
  readonly stiffness: number;
  /** N, closed with when placed. */
  readonly preload: number;
  readonly ref: Ref;
}

/** A cab on springs is a body of its own. */
export const cabBody = (vehicle: Vehicle): ElementId => `${vehicle.id}/cab`;

/** The body that a part belongs to: the cab for moving parts within its length, else the vehicle. */
export const bodyOfPart = (vehicle: Vehicle, part: Part): ElementId =>
  vehicle.cab !== undefined &&
  part.moves &&
  part.from >= vehicle.cab.from - 1e-6 &&
  part.to <= vehicle.cab.to + 1e-6
    ? cabBody(vehicle)
    : vehicle.id;

/**
 * Along the strut, N/m. A rated strut's own give is not published in general: a setting, from memory, of 20,000 lb
 * an inch; a post's is E A / L.
 */
export const axialStiffness = (strut: Strut, length: number): number =>
  strut.gear.kind === 'timber post'
    ? (strut.gear.timber.modulusAlong *
        strut.gear.timber.width *
        strut.gear.timber.depth *
        strut.gear.plies) /
      length
    : (20_000 * poundForce) / inch;
