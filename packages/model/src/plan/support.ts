import type { SourceNote } from '@cribwright/messages';
import type { Interval } from './interval.js';
import type { ElementId, Ref } from './ref.js';

/** Everything a crew puts in. Plan axes; lengths m, forces N, angles rad. */
export type Support = Crib | StepChock | Strut | Tie | Chock | Pad;

/** Tables over this type list every kind, so that a new one does not compile until each of them knows it. */
export type SupportKind = Support['kind'];

/** The type of the supports of one kind. */
export type SupportOf<K extends SupportKind> = Extract<Support, { readonly kind: K }>;

/** A piece of timber: its size, its wood and its design values. */
export interface Timber {
  readonly name: string;
  /** `4x4` */
  readonly nominal: string;
  /** Dressed width of the section, m. */
  readonly width: number;
  /** Dressed depth of the section, m. */
  readonly depth: number;
  /** m */
  readonly length: number;
  readonly species: string;
  /** Reference design value perpendicular to grain, Pa (NDS Supplement). */
  readonly perpendicularToGrain: number;
  /** Modulus perpendicular to grain, Pa. */
  readonly modulusAcross: number;
  /** Modulus parallel to grain, Pa. */
  readonly modulusAlong: number;
  /** Minimum modulus for columns, Pa. */
  readonly modulusMin: number;
  /** Reference design value parallel to grain, Pa. */
  readonly parallelToGrain: number;
  /** Wet in service, so that the wet service factor applies. */
  readonly wet: boolean;
  /** kg/m³ */
  readonly density: number;
  /** Of the density. Left out, it comes from where the design values do. */
  readonly densitySource?: SourceNote;
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

/** A stack of timbers, course on course, each across the one below. */
export interface Crib {
  readonly kind: 'crib';
  readonly id: ElementId;
  readonly name: string;
  readonly timber: Timber;
  /** How many timbers lie in a course that runs lengthwise, and in one that runs crosswise. `2 by 2` is two and two. */
  readonly layout: { readonly lengthwise: number; readonly crosswise: number };
  readonly base: 'open' | 'solid';
  /** Which way the timbers of the top course run. */
  readonly top: 'lengthwise' | 'crosswise';
  /** How many courses there are, the solid base course included. */
  readonly courses: number;
  /** Past each outer contact, at both ends of every timber, m. */
  readonly overhang: number;
  /**
   * What closes the last gap: how many pairs, the gap that one pair closes, m, and how hard they are driven, N.
   * `undefined` means none stated.
   */
  readonly wedges:
    | { readonly pairs: number; readonly travel: Interval; readonly preload: number }
    | undefined;
  /** Total thickness of shims and plates under the load, m. */
  readonly shims: number;
  readonly standsOn: StandsOn;
  /** Center of the crib, plan axes, m. */
  readonly at: { readonly x: number; readonly y: number };
  readonly captures: readonly Capture[];
  /** Built outside and slid in. */
  readonly slidIn: boolean;
  readonly ref: Ref;
}

/** What a crib or a step chock stands on. */
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
  /** Center, plan axes, m. */
  readonly at: { readonly x: number; readonly y: number };
  /** Of its steps above its underside, m, as its type lists them. */
  readonly heights: readonly number[];
  /** N. `undefined` when nobody knows: never taken as anything. */
  readonly capacity: number | undefined;
  readonly captures: readonly Capture[];
  readonly standsOn: StandsOn;
  readonly source: SourceNote;
  readonly ref: Ref;
}

/** A strut from the ground to a part of a vehicle. It pushes along itself, and never pulls. */
export interface Strut {
  readonly kind: 'strut';
  readonly id: ElementId;
  readonly name: string;
  readonly gear: StrutGear;
  /** Where it meets the part, plan axes, m. */
  readonly head: {
    readonly vehicle: ElementId;
    readonly part: string;
    readonly x: number;
    readonly y: number;
    readonly z: Interval;
    readonly ref: Ref;
  };
  /** Where its base stands on the ground, plan axes, m. */
  readonly foot: { readonly x: number; readonly y: number; readonly pad?: ElementId; readonly ref: Ref };
  /** What the author says the angle to the ground is, rad. The real one follows from head and base. */
  readonly statedAngle: number | undefined;
  /** What keeps it from giving way once it is set. `undefined` means none stated. */
  readonly lock: 'pinned' | 'collar' | 'pump only' | undefined;
  /** How hard it is set, along the strut, N; 0 where none is stated. */
  readonly preload: number;
  readonly ref: Ref;
}

/** What a strut is: a rated one, or a post of timber. */
export type StrutGear =
  | {
      readonly kind: 'rated strut';
      readonly name: string;
      /** m */
      readonly shortest: number;
      /** m */
      readonly longest: number;
      /** Rated load, N, against length, m, longest last. */
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
      /** How many timbers are side by side: a count. */
      readonly plies: number;
      readonly ref: Ref;
    };

/** What one end of a tie is fixed to. Plan axes. */
export type Anchor =
  | { readonly kind: 'strut base'; readonly strut: ElementId }
  | { readonly kind: 'strut head'; readonly strut: ElementId }
  | {
      readonly kind: 'vehicle part';
      readonly vehicle: ElementId;
      readonly part: string;
      /** m, as are `y` and `z`. */
      readonly x: number;
      /** m */
      readonly y: number;
      /** m above the ground. */
      readonly z: number;
    }
  | {
      readonly kind: 'ground anchor';
      readonly name: string;
      /** m, as is `y`. */
      readonly x: number;
      /** m */
      readonly y: number;
      /** N. `undefined` when nobody knows: never taken as anything. */
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
  /** N; 0 where none is stated. */
  readonly pretension: number;
  readonly ref: Ref;
}

/** Wheel chocks on both sides of an axle. */
export interface Chock {
  readonly kind: 'chock';
  readonly id: ElementId;
  readonly name: string;
  readonly vehicle: ElementId;
  /** Its name. `undefined` means the last axle. */
  readonly axle: string | undefined;
  /** Which way they keep the wheels from rolling. */
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
