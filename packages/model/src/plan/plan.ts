import type { SourceNote } from '@cribwright/messages';
import type { Interval } from './interval.js';
import type { Policy } from './policy.js';
import type { ElementId, Ref } from './ref.js';
import type { Site } from './site.js';
import type { Chock, Crib, Pad, StepChock, Strut, Tie, Timber } from './support.js';
import type { Vehicle, VehicleContact } from './vehicle.js';

/**
 * One stabilization plan, complete: what the language hands to the engine. Plain data, JSON-able, SI inside.
 * Plan axes: x back from the front of the main vehicle, y to its passenger side, z up from the ground.
 */
export interface Plan {
  readonly id: ElementId;
  readonly title: string;
  /** Units the reader sees. The analysis itself does not depend on it. */
  readonly display: 'us' | 'si';
  readonly policy: Policy;
  readonly ground: Ground;
  /** The first is the main vehicle. */
  readonly vehicles: readonly Vehicle[];
  readonly contacts: readonly VehicleContact[];
  readonly cribs: readonly Crib[];
  readonly stepChocks: readonly StepChock[];
  readonly struts: readonly Strut[];
  readonly ties: readonly Tie[];
  readonly chocks: readonly Chock[];
  readonly pads: readonly Pad[];
  readonly steps: readonly Step[];
  readonly crews: readonly Crew[];
  readonly units: readonly RespondingUnit[];
  readonly toolLoads: readonly WorkingLoad[];
  readonly egress: readonly Egress[];
  readonly sizeUp: readonly SizeUpItem[];
  readonly expectations: readonly Expectation[];
  readonly acceptances: readonly Acceptance[];
  /** True where the plan says that it means to lift. */
  readonly lifts: boolean;
  /** The terminal or yard that it is written for, where the plan stands in one or is named by one. */
  readonly site?: Site;
  /**
   * Something that this plan reads from could not be read, so that part of it may be missing. Its checks say what
   * they find, and nothing that the plan expects of itself holds.
   */
  readonly partial?: true;
  /**
   * Of a partial plan, what may be missing. Checks that would take it for not there are not run, so that they invent
   * no danger and find nothing safe.
   */
  readonly unread?: readonly UnreadPart[];
  readonly ref: Ref;
}

/**
 * A part of a plan that may be missing. `vehicle`: something of a vehicle in it, so that nothing is known of where its
 * parts are. `rest`: anything else that holds, loads or carries.
 */
export type UnreadPart = 'size up' | 'steps' | 'vehicle' | 'rest';

/** What the scene stands on. */
export interface Ground {
  readonly surface: Surface;
  /** Rise over run, a ratio, never below zero; `toward` is the way that falls. */
  readonly grade: number;
  readonly toward: 'front' | 'rear' | 'driver side' | 'passenger side';
  /** What nobody said of the grade, so that the checks take it as level, or as falling to the rear. */
  readonly unsaid?: 'grade' | 'direction' | undefined;
  /** Which way the front of the main vehicle points, rad clockwise from north. */
  readonly facing?: number | undefined;
  readonly ref: Ref;
}

/** A kind of ground. Friction is a ratio of forces. */
export interface Surface {
  readonly name: string;
  /** Allowable bearing, Pa. `undefined` when unknown: never taken as zero and never as enough. */
  readonly bearing: number | undefined;
  readonly bearingSource: SourceNote;
  /** Of a tire on it: a ratio of forces. */
  readonly frictionTire: Interval;
  /** Of timber on it: a ratio of forces. */
  readonly frictionTimber: Interval;
  readonly frictionSource: SourceNote;
  /**
   * Of a vehicle's own metal that lies on it: a ratio of forces. `undefined` when unknown: never taken as zero and
   * never as enough.
   */
  readonly frictionBody?: Interval | undefined;
  readonly frictionBodySource?: SourceNote;
  readonly ref: Ref;
}

/** What a step does, as the language spells it. */
export type StepAction =
  | 'size up'
  | 'chock'
  | 'capture'
  | 'build'
  | 'slide'
  | 'set'
  | 'lock'
  | 'tension'
  | 'check'
  | 'remove';

/** One step of the order of work. */
export interface Step {
  readonly id: ElementId;
  /** As the plan numbers it, from 1. */
  readonly number: number;
  readonly action: StepAction;
  readonly targets: readonly ElementId[];
  /** Cribs and chocks by which a vehicle is captured. */
  readonly with: readonly ElementId[];
  readonly after: readonly ElementId[];
  /** How many people it takes. `undefined` where the plan does not say. */
  readonly crew: number | undefined;
  /** How long it takes, s. `undefined` where the plan does not say. */
  readonly takes: Interval | undefined;
  readonly note?: string;
  readonly ref: Ref;
}

/** People at the scene. A plan may have several crews. */
export interface Crew {
  readonly name: string;
  /** A count. */
  readonly people: number;
}

/** A unit that responds, with its cache. */
export interface RespondingUnit {
  readonly id: ElementId;
  readonly name: string;
  /** A count. `undefined` where the cache does not say. */
  readonly people: number | undefined;
  readonly carries: readonly StockItem[];
  readonly ref: Ref;
}

/** So many pieces of one thing that a unit carries. */
export interface StockItem {
  readonly kind:
    | 'timber'
    | 'wedge pair'
    | 'strut'
    | 'strap'
    | 'chain'
    | 'pad'
    | 'chock'
    | 'step chock'
    | 'shim';
  /** The name that plans use: `Fir4x4`, `Strut4to8ft`. */
  readonly item: string;
  /** Of timber and pads, m. */
  readonly length?: number;
  /** Of timber: what it is, so that design help can build with it. */
  readonly timber?: Timber;
  /** How many there are. */
  readonly count: number;
  readonly ref: Ref;
}

/** A push or weight put on while crews work: a spreader on a pillar, a rescuer on the roof. */
export interface WorkingLoad {
  readonly id: ElementId;
  readonly name: string;
  readonly on: ElementId;
  /** Where it acts, plan axes, m. */
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  /** N, not below zero. */
  readonly force: Interval;
  /** Which way it pushes the vehicle: plan axes, length 1, no unit. */
  readonly direction: { readonly x: number; readonly y: number; readonly z: number };
  readonly ref: Ref;
}

/** A way out for patients and crews that must stay clear. */
export interface Egress {
  readonly id: ElementId;
  readonly name: string;
  /** Along its middle, in order, plan axes, m. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Clear width, m. */
  readonly width: number;
  readonly ref: Ref;
}

/** What the officer found at the size-up, in his or her own words. */
export interface SizeUpItem {
  readonly item:
    | 'fuel'
    | 'battery'
    | 'cargo'
    | 'brakes'
    | 'occupants'
    | 'hazards'
    | 'doors'
    | 'overhead'
    | 'traffic';
  readonly finding: string;
  readonly ref: Ref;
}

/** What a plan expects of its own analysis: nothing unsafe, a finding, or a figure. */
export type Expectation =
  | { readonly kind: 'safe'; readonly ref: Ref }
  | { readonly kind: 'finding'; readonly rule: string; readonly on: ElementId | undefined; readonly ref: Ref }
  | {
      readonly kind: 'figure';
      readonly figure: string;
      readonly on: ElementId;
      /** Of a crib, counted from 1. `undefined` asks for the whole support. */
      readonly contact: number | undefined;
      /** In SI. */
      readonly value: Interval;
      /** `about` allows this share either way; 0 allows none. */
      readonly within: number;
      readonly ref: Ref;
    };

/** A finding that a named person accepts, with a reason, until a day. */
export interface Acceptance {
  readonly id: ElementId;
  readonly rule: string;
  readonly on: ElementId;
  readonly reason: string;
  readonly by: string;
  /** ISO date after which it no longer stands. */
  readonly until: string;
  readonly ref: Ref;
}
