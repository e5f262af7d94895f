import type { Figure, List, Message, Phrase } from '@cribwright/messages';
import type { ElementId, Interval, Ref, SupportKind } from '@cribwright/model';
import type { Finding } from '../finding/finding.js';

/** All that the engine has to say about one plan. Plain data. */
export interface Analysis {
  /** No check of this plan has run yet: whatever waits for one is missing, and must be said to be missing. */
  readonly unchecked?: true;
  /** Nothing here hangs on a load: what does is missing, and must be said to be missing. */
  readonly pending?: 'loads';
  readonly plan: { readonly title: string; readonly ref: Ref };
  readonly bodies: readonly BodyResult[];
  readonly supports: readonly SupportResult[];
  /** As found (before the crew), then one for each step that changes what stands. */
  readonly stages: readonly StageResult[];
  readonly push: PushResult | undefined;
  readonly ground: readonly GroundResult[];
  readonly timeline: TimelineResult | undefined;
  readonly materials: MaterialsResult | undefined;
  readonly findings: readonly Finding[];
  readonly expectations: readonly ExpectationResult[];
  /** What each model assumes, for the sheet. */
  readonly assumptions: readonly Message[];
}

export interface BodyResult {
  readonly vehicle: ElementId;
  readonly name: string;
  readonly weight: Figure;
  readonly center: {
    readonly x: Figure;
    readonly y: Figure;
    readonly z: Figure;
  };
}

export interface SupportResult {
  readonly id: ElementId;
  readonly name: string;
  readonly kind: SupportKind;
  /** Keys used: `height`, `heightLimit`, `capacity`, `load`, `asBuilt`, `bound`, `use`, `angle`, `pressure`, `width`, `overhang`, `gap`, … */
  readonly figures: Readonly<Record<string, Figure>>;
  readonly contacts: readonly ContactResult[];
  readonly worst: Finding['severity'] | undefined;
}

export interface ContactResult {
  readonly number: number;
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  /** The part it meets, or `undefined` where it meets nothing. */
  readonly meets: { readonly vehicle: ElementId; readonly part: string } | undefined;
  readonly loaded: boolean;
  /** The worst over stages, losses and ranges; `governs` names the case. */
  readonly load: Figure | undefined;
  readonly asBuilt?: Figure | undefined;
  /** The most that any way of sharing could put on it, by statics alone. */
  readonly bound?: Figure | undefined;
  readonly capacity: Figure | undefined;
  readonly use: Figure | undefined;
}

/** One load case: nothing lost, or one support lost. Loads are N over the box of weights and places. */
export interface LoadCase {
  readonly id: string;
  /** `as built`, `car gives way` */
  readonly title: Message;
  readonly lost: Ref | undefined;
  readonly rests: boolean;
  /** `the front of the trailer` where it does not rest. */
  readonly free: Message | undefined;
  readonly reactions: readonly Reaction[];
  readonly notes: readonly Message[];
  /** Of the finished system as built, and when a vehicle beneath gives way: the sums, to be followed on paper. */
  readonly paper?: readonly PaperTrail[];
}

/** One corner of the ranges worked out in steps. One for each group of bodies that hang together. */
export interface PaperTrail {
  /** `trailer heaviest, center farthest to its rear`. `undefined` where nothing is a range. */
  readonly corner: List | undefined;
  /** How each body settles: at its front, at its rear, and how much more at its passenger side. */
  readonly settling: readonly Figure[];
  /** By the id of the reaction. */
  readonly loads: Readonly<Record<string, Figure>>;
  /** The loads add up to the weight, and their middle is the center of gravity. */
  readonly checks: readonly Figure[];
}

export interface Reaction {
  /** `crib/A#1`, `vehicle/trailer/axle 2/driver` */
  readonly id: string;
  readonly element: ElementId;
  readonly label: Message;
  readonly at: { readonly x: number; readonly y: number };
  /** The body above, and what is below. */
  readonly upper: ElementId;
  readonly lower: ElementId | 'ground';
  readonly load: Interval;
}

export interface StageResult {
  readonly id: string;
  readonly title: Message;
  readonly step: ElementId | undefined;
  /** What stands once the step is done. */
  readonly standing: readonly ElementId[];
  /** What the step is adding, for the half-built picture. */
  readonly adding: readonly ElementId[];
  readonly asBuilt: LoadCase;
  readonly losses: readonly LoadCase[];
}

export interface PushResult {
  readonly vehicle: ElementId;
  readonly height: Figure;
  /** Friction under a vehicle that lies on its side or roof. */
  readonly grip?: Figure;
  /** 24 of them, evenly round. Direction 0 pushes toward the rear, π/2 toward the passenger side. */
  readonly directions: readonly {
    readonly angle: number;
    /** Largest push that an equilibrium exists for. */
    readonly holds: Figure;
    readonly share: Figure;
    readonly givesFirst: { readonly ref: Ref; readonly how: Message } | undefined;
  }[];
  readonly least: Figure;
}

export interface GroundResult {
  readonly element: ElementId;
  readonly load: Figure;
  /** The pad under it. */
  readonly pad: ElementId | undefined;
  /** What stands on the ground or on the pad, m. */
  readonly footprint: { readonly lengthwise: number; readonly crosswise: number };
  /** Of the base or pad that presses on the ground at all. */
  readonly area: Figure;
  /** Of it, what bears under a load off the middle. */
  readonly bearing: Figure;
  /** Load ÷ bearing area. */
  readonly pressure: Figure;
  /** The most at an edge of a stiff base. */
  readonly edge: Figure;
  readonly allowable: Figure;
  readonly padNeeded: Figure | undefined;
}

export interface TimelineResult {
  readonly rows: readonly {
    readonly step: ElementId;
    readonly number: number;
    readonly title: Message;
    readonly start: Interval;
    readonly end: Interval;
    readonly crew: number | undefined;
    readonly critical: boolean;
  }[];
  readonly total: Figure;
  readonly crewPeak: Figure;
}

export interface MaterialsResult {
  readonly rows: readonly {
    /** The piece, with its length where it has one. */
    readonly item: Phrase;
    /** Its name in the plan. */
    readonly piece: string;
    readonly kind: string;
    readonly needed: Figure;
    readonly carried: Figure;
    readonly short: Figure;
    readonly ref: Ref | undefined;
  }[];
}

export interface ExpectationResult {
  readonly ref: Ref;
  readonly text: Message;
  readonly held: boolean;
  readonly why: Message;
}
