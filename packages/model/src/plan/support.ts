import type { SourceNote } from '@cribwright/messages';
import type { Interval } from './interval.js';
import type { ElementId, Ref } from './ref.js';

/** Everything a crew puts in. Plan axes; lengths m, forces N, angles rad. */
export type Support = Crib | StepChock | Strut | Tie | Chock | Pad;

/** Tables over this type list every kind, so that a new one does not compile until each of them knows it. */
export type SupportKind = Support['kind'];

/** The type of the supports of one kind. */
export type SupportOf<K extends SupportKind> = Extract<Support, { readonly kind: K }>;

export interface Timber {
  readonly name: string;
  /** `4x4` */
  readonly nominal: string;
  /** Dressed width and depth of the section. */
  readonly width: number;
  readonly depth: number;
  readonly length: number;
  readonly species: string;
  /** Reference design value perpendicular to grain, Pa (NDS Supplement). */
  readonly perpendicularToGrain: number;
  /** Modulus perpendicular to grain, Pa. */
  readonly modulusAcross: number;
  readonly modulusAlong: number;
  /** Minimum modulus for columns, Pa. */
  readonly modulusMin: number;
  /** Reference design value parallel to grain, Pa. */
  readonly parallelToGrain: number;
  readonly wet: boolean;
  /** kg/m³ */
  readonly density: number;
  /** Of the design values. */
  readonly source: SourceNote;
  /** Of the dressed size, where it is another. */
  readonly dressedSource?: SourceNote;
  readonly ref: Ref;
}

/** A part of a vehicle that the top of a crib is meant to meet. */
export interface Capture {
  readonly vehicle: ElementId;
  readonly part: string;
  /** Which pair of contacts the author gives to it: `rail` takes the outer pair, `joists` the inner one. */
  readonly contacts?: 'all' | 'outer' | 'inner' | 'front' | 'rear';
  readonly ref: Ref;
}

export interface Crib {
  readonly kind: 'crib';
  readonly id: ElementId;
  readonly name: string;
  readonly timber: Timber;
  /** Timbers in a course that runs lengthwise, and in one that runs crosswise. `2 by 2` is two and two. */
  readonly layout: { readonly lengthwise: number; readonly crosswise: number };
  readonly base: 'open' | 'solid';
  /** Which way the timbers of the top course run. */
  readonly top: 'lengthwise' | 'crosswise';
  /** All courses, the solid base course included. */
  readonly courses: number;
  /** Past each outer contact, at both ends of every timber. */
  readonly overhang: number;
  /** What closes the last gap. `undefined` means none stated. */
  readonly wedges:
    | { readonly pairs: number; readonly travel: Interval; readonly preload: number }
    | undefined;
  /** Total thickness of shims and plates under the load. */
  readonly shims: number;
  readonly standsOn: StandsOn;
  /** Center of the crib. */
  readonly at: { readonly x: number; readonly y: number };
  readonly captures: readonly Capture[];
  /** Built outside and slid in. */
  readonly slidIn: boolean;
  readonly ref: Ref;
}

export type StandsOn =
  | { readonly kind: 'ground' }
  | {
      readonly kind: 'vehicle';
      readonly vehicle: ElementId;
      readonly part: string;
    }
  | { readonly kind: 'pad'; readonly pad: ElementId };

/** A stepped block: one bearing edge, the height picked by the step used. */
export interface StepChock {
  readonly kind: 'step chock';
  readonly id: ElementId;
  readonly name: string;
  /** Of what make it is, as caches list it. */
  readonly typeName?: string;
  readonly at: { readonly x: number; readonly y: number };
  readonly heights: readonly number[];
  readonly capacity: number | undefined;
  readonly captures: readonly Capture[];
  readonly standsOn: StandsOn;
  readonly source: SourceNote;
  readonly ref: Ref;
}

export interface Strut {
  readonly kind: 'strut';
  readonly id: ElementId;
  readonly name: string;
  readonly gear: StrutGear;
  readonly head: {
    readonly vehicle: ElementId;
    readonly part: string;
    readonly x: number;
    readonly y: number;
    readonly z: Interval;
    readonly ref: Ref;
  };
  readonly foot: { readonly x: number; readonly y: number; readonly pad?: ElementId; readonly ref: Ref };
  /** What the author says the angle is. The real one follows from head and base. */
  readonly statedAngle: number | undefined;
  readonly lock: 'pinned' | 'collar' | 'pump only' | undefined;
  readonly preload: number;
  readonly ref: Ref;
}

export type StrutGear =
  | {
      readonly kind: 'rated strut';
      readonly name: string;
      readonly shortest: number;
      readonly longest: number;
      /** Rated load against length, longest last. */
      readonly ratings: readonly { readonly length: number; readonly load: number }[];
      /** Of its foot on the ground, m², where the type says so. */
      readonly footArea?: number;
      readonly source: SourceNote;
      readonly ref: Ref;
    }
  | {
      readonly kind: 'timber post';
      readonly name: string;
      readonly timber: Timber;
      readonly plies: number;
      readonly ref: Ref;
    };

export type Anchor =
  | { readonly kind: 'strut base'; readonly strut: ElementId }
  | { readonly kind: 'strut head'; readonly strut: ElementId }
  | {
      readonly kind: 'vehicle part';
      readonly vehicle: ElementId;
      readonly part: string;
      readonly x: number;
      readonly y: number;
      readonly z: number;
    }
  | {
      readonly kind: 'ground anchor';
      readonly name: string;
      readonly x: number;
      readonly y: number;
      readonly holds: number | undefined;
    };

/** A strap, chain or wire rope: pulls, never pushes. */
export interface Tie {
  readonly kind: 'tie';
  readonly id: ElementId;
  readonly name: string;
  readonly gear: {
    readonly kind: 'strap' | 'chain' | 'wire rope';
    readonly name: string;
    /** Working load limit, N. `undefined` when nobody knows: never taken as anything. */
    readonly rating: number | undefined;
    readonly source: SourceNote;
  };
  readonly from: Anchor;
  readonly to: Anchor;
  readonly pretension: number;
  readonly ref: Ref;
}

export interface Chock {
  readonly kind: 'chock';
  readonly id: ElementId;
  readonly name: string;
  readonly vehicle: ElementId;
  readonly axle: string | undefined;
  readonly ways: 'both' | 'forward' | 'rearward';
  readonly ref: Ref;
}

/** `timber`: timbers side by side that run lengthwise. */
export type PadMaterial = 'timber' | 'plywood' | 'steel';

/** A plate or a mat of timbers that spreads a foot's load over the ground. */
export interface Pad {
  readonly kind: 'pad';
  readonly id: ElementId;
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** `undefined` when nobody said: how far it spreads a load is then not known. */
  readonly material?: PadMaterial | undefined;
  readonly under: ElementId;
  readonly ref: Ref;
}
