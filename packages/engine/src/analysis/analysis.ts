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

/** A vehicle with its cargo: weight and center of gravity, each with its calculation. */
export interface BodyResult {
  readonly vehicle: ElementId;
  readonly name: string;
  readonly weight: Figure;
  /** In plan axes, m. */
  readonly center: {
    readonly x: Figure;
    readonly y: Figure;
    readonly z: Figure;
  };
}

/** A support with what was worked out for it. */
export interface SupportResult {
  readonly id: ElementId;
  readonly name: string;
  readonly kind: SupportKind;
  /** Keys used: `height`, `heightLimit`, `capacity`, `load`, `asBuilt`, `bound`, `use`, `angle`, `pressure`, `width`, `overhang`, `gap`, … */
  readonly figures: Readonly<Record<string, Figure>>;
  readonly contacts: readonly ContactResult[];
  /** The gravest finding on it; `undefined` where there is none. */
  readonly worst: Finding['severity'] | undefined;
}

/** One place where a crib may meet a vehicle. */
export interface ContactResult {
  /** Counted from 1, front to rear and driver to passenger side. */
  readonly number: number;
  /** In plan axes, m. */
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
  /** The part it meets, or `undefined` where it meets nothing. */
  readonly meets: { readonly vehicle: ElementId; readonly part: string } | undefined;
  /** Whether it meets a part, so that it carries a load. */
  readonly loaded: boolean;
  /** The worst over stages, losses and ranges; `governs` names the case. */
  readonly load: Figure | undefined;
  readonly asBuilt?: Figure | undefined;
  /** The most that any way of sharing could put on it, by statics alone. */
  readonly bound?: Figure | undefined;
  readonly capacity: Figure | undefined;
  /** Load over capacity. `undefined` where either is not known. */
  readonly use: Figure | undefined;
}

/** One load case: nothing lost, or one support lost. Loads are N over the box of weights and places. */
export interface LoadCase {
  readonly id: string;
  /** `as built`, `car gives way` */
  readonly title: Message;
  readonly lost: Ref | undefined;
  /** Whether an equilibrium was found. False where the system falls, and where neither could be proven. */
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

/** What one place of support carries in a load case. */
export interface Reaction {
  /** `crib/A#1`, `vehicle/trailer/axle 2/driver` */
  readonly id: string;
  readonly element: ElementId;
  readonly label: Message;
  /** Plan axes, m. */
  readonly at: { readonly x: number; readonly y: number };
  /** The body above, and what is below. */
  readonly upper: ElementId;
  readonly lower: ElementId | 'ground';
  /** Upward, N, least and most over the ranges of weights and places. Zero where the contact opens. */
  readonly load: Interval;
}

/** The system after a step: what stands, and how loads go as built and after each loss. */
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

/** How hard a sideways push the finished system holds, direction by direction. */
export interface PushResult {
  readonly vehicle: ElementId;
  /** Of the push above the ground. */
  readonly height: Figure;
  /** Friction under a vehicle that lies on its side or roof. */
  readonly grip?: Figure;
  /** 24 of them, evenly round. Direction 0 pushes toward the rear, π/2 toward the passenger side. */
  readonly directions: readonly {
    /** rad, from 0 to less than 2π. */
    readonly angle: number;
    /** Largest push that an equilibrium exists for. */
    readonly holds: Figure;
    /** That push over the weight that it is compared with: a ratio. */
    readonly share: Figure;
    readonly givesFirst: { readonly ref: Ref; readonly how: Message } | undefined;
  }[];
  /** The least share of all directions. */
  readonly least: Figure;
}

/** What a crib or the base of a strut presses on the ground with. */
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
  /** Allowable bearing of the ground. Its value is `undefined` where nobody stated it. */
  readonly allowable: Figure;
  /**
   * The area of a pad that would do. `undefined` where the base is large enough, and where nobody stated what the
   * ground allows.
   */
  readonly padNeeded: Figure | undefined;
}

/** When each step starts and ends, by the order of steps and the crew that each takes. */
export interface TimelineResult {
  readonly rows: readonly {
    readonly step: ElementId;
    /** The number that the plan gives it; no unit. */
    readonly number: number;
    readonly title: Message;
    /** s after the first step starts. */
    readonly start: Interval;
    /** s after the first step starts. */
    readonly end: Interval;
    /** How many people it takes; `undefined` where the plan does not say. */
    readonly crew: number | undefined;
    /** Whether a delay of it delays the whole. */
    readonly critical: boolean;
  }[];
  readonly total: Figure;
  /** The most people at work at once: a count. */
  readonly crewPeak: Figure;
}

/** The pieces that the plan takes, beside what the units that respond carry. All figures are counts. */
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

/** Whether a plan is as one of its `expect` lines says, and why not. */
export interface ExpectationResult {
  readonly ref: Ref;
  readonly text: Message;
  readonly held: boolean;
  readonly why: Message;
}
