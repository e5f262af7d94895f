import type { SourceNote } from '@cribwright/messages';
import type { Interval } from './interval.js';
import type { ElementId, Ref } from './ref.js';

/**
 * Vehicle axes: x back from the vehicle's own front, y to its passenger side, z up from the ground it stands on.
 * Lengths m, forces N. Plan axes are the same for the main vehicle (the first one placed at 0).
 */
export interface Vehicle {
  readonly kind: 'vehicle';
  readonly id: ElementId;
  readonly name: string;
  /** `VanTrailer53`, then the types it extends, nearest first. */
  readonly types: readonly string[];
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly at: { readonly x: number; readonly y: number };
  /** Turned about the vertical from the main vehicle's direction, rad; 0 same way, π facing it. */
  readonly heading: number;
  readonly position: VehiclePosition;
  /** Empty weight and center, where stated. Otherwise they follow from the axle loads. */
  readonly statedWeight?: Interval;
  readonly statedWeightSource?: SourceNote;
  readonly statedCenter?: { readonly x: Interval; readonly y: Interval; readonly z: Interval };
  /** Height of the empty center of gravity, where the axles give the rest. */
  readonly emptyCenterHeight: Interval | undefined;
  readonly axles: readonly Axle[];
  readonly parts: readonly Part[];
  readonly cargo: readonly Cargo[];
  /** Parts of this vehicle that sit on springs of their own: a cab, as its own body. */
  readonly cab?: Cab;
  readonly brakesSet: boolean | undefined;
  readonly source: SourceNote;
}

/** How a vehicle lies. The angle of a pitched one in rad; nose down is above zero. */
export type VehiclePosition =
  | { readonly kind: 'upright' }
  | { readonly kind: 'pitched'; readonly angle: number }
  | { readonly kind: 'on its side'; readonly side: 'driver' | 'passenger' }
  | { readonly kind: 'on its roof' };

/** An axle with its wheels, in the axes of its vehicle. */
export interface Axle {
  readonly id: string;
  readonly name: string;
  /** From the front of the vehicle, m. */
  readonly x: number;
  /** What the axle carries of the empty vehicle, N. */
  readonly emptyLoad: Interval;
  /** Left out, it comes from where the rest of the vehicle does. */
  readonly emptyLoadSource?: SourceNote;
  /** From the middle of the tires on one side to the middle of those on the other, m. */
  readonly track: number;
  /** A count. */
  readonly tiresEachSide: 1 | 2;
  readonly suspension: 'air' | 'spring' | 'rigid';
  /** Of one wheel end: tire and suspension in series, N/m. */
  readonly stiffness: number;
  readonly stiffnessSource: SourceNote;
  /** Wheels lost, flat or off the ground before the crew came. */
  readonly missing: readonly ('driver' | 'passenger')[];
  readonly ref: Ref;
}

/**
 * A piece of the vehicle that a support can meet.
 * - `rails`: run lengthwise at each of `offsets`
 * - `crossmembers`: run crosswise between the outermost `offsets`, every `spacing` from `from` to `to`
 * - `patch`: a flat area between `from` and `to`, and between the two `offsets`
 * - `points`: single places at `from`, one at each of `offsets` (legs, mounts, kingpin)
 */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly form: 'rails' | 'joists' | 'patch' | 'points';
  readonly from: number;
  readonly to: number;
  readonly spacing?: number;
  readonly offsets: readonly number[];
  /** Underside above the ground as the vehicle stands upright. */
  readonly height: Interval;
  readonly width: number;
  readonly depth: number;
  readonly mayBear: boolean;
  /** Why it may not bear, or what to mind. */
  readonly remark?: string;
  /** It moves on its own (door, hood, cab on springs). A strut head never goes here. */
  readonly moves: boolean;
  /** N, where the part has a rating. */
  readonly rating?: number;
  /** Holds the vehicle up before the crew came: landing gear leg, kingpin on a fifth wheel. */
  readonly carries?: {
    /** Of one point, N/m. */
    readonly stiffness: number;
    readonly down: boolean;
    /** All points of the part together, empty, N. With it a trailer's weight follows from axles and kingpin. */
    readonly emptyLoad?: Interval;
  };
  /** Where its numbers come from. What is left out comes from where the rest of the vehicle does. */
  readonly sources?: Readonly<Partial<Record<'height' | 'width' | 'rating' | 'carries', SourceNote>>>;
  readonly ref: Ref;
}

/** What a vehicle carries, in the axes of that vehicle. */
export interface Cargo {
  readonly id: string;
  readonly name: string;
  /** N */
  readonly weight: Interval;
  /**
   * Lengthwise extent from the vehicle's front, m. Unless `center` is given, the center lies in the middle third: a
   * load that fills its length and thins out evenly from one end to nothing at the other has it at a third.
   */
  readonly from: number;
  /** m */
  readonly to: number;
  /** Of its center of gravity from the vehicle's front, m. */
  readonly center?: Interval;
  /** Of its center of gravity off the middle, m, passenger side above zero. */
  readonly offset: Interval;
  /** Of its center of gravity above the ground, m. `undefined` where nobody stated it. */
  readonly height: Interval | undefined;
  /** Liquid, or loose, or hung: may move. */
  readonly shifts: boolean;
  /** Where the weight follows from how much there is: volume, m³, and weight per volume, N/m³, with its source. */
  readonly byVolume?: {
    readonly volume: Interval;
    readonly unitWeight: Interval;
    readonly source: SourceNote;
  };
  readonly ref: Ref;
}

/** A cab on its own mounts: rests on the frame in front, on springs behind. */
export interface Cab {
  /** Lengthwise extent from the front of the vehicle, m. */
  readonly from: number;
  /** m */
  readonly to: number;
  /** N */
  readonly weight: Interval;
  /** From the front of the vehicle, and above the ground, m. */
  readonly center: { readonly x: Interval; readonly z: Interval };
  readonly mounts: readonly {
    readonly name: string;
    /** From the front of the vehicle, m. */
    readonly x: number;
    /** Off the middle of the vehicle, m, passenger side above zero. */
    readonly offsets: readonly number[];
    readonly spring: 'air' | 'spring' | 'rigid';
    /** Of one mount, N/m. */
    readonly stiffness: number;
  }[];
  readonly ref: Ref;
}

/** One vehicle resting on another: a car under a rail, a trailer's kingpin on a fifth wheel. */
export interface VehicleContact {
  readonly id: ElementId;
  readonly lower: ElementId;
  readonly lowerPart?: string;
  readonly upper: ElementId;
  readonly upperPart: string;
  /** Where, in plan axes. One point for each place of contact. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly coupled: boolean;
  /** Of one point, N/m. */
  readonly stiffness: number;
  readonly ref: Ref;
}
