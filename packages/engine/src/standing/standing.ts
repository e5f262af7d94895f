import type { ElementId } from '@cribwright/model';
import type { BuildingStage } from '../loss/building.js';
import type { JointCorner } from '../loss/components.js';
import type { Loss } from '../loss/losses.js';
import type { PushEnd } from '../statics/index.js';
import type { Group } from './standing-scene.js';

/** How a plan stands in space: stage by stage, loss by loss, push by push. Data, no words. */
export interface Standing {
  readonly groups: readonly StandingGroup[];
  /** Corners of ranges that were left out because there are too many. Never empty where one was. */
  readonly leftOut: readonly LeftOut[];
}

export interface LeftOut {
  readonly vehicles: readonly ElementId[];
  readonly done: number;
  readonly of: number;
}

export interface StandingGroup {
  readonly group: Group;
  /** Couplings that have no other half in the plan, by vehicle. What they hold is held by nothing. */
  readonly loose: readonly ElementId[];
  readonly stages: readonly StandingStage[];
  /** Of the finished plan, for each vehicle. */
  readonly pushes: readonly VehiclePush[];
}

export interface StandingStage {
  readonly stage: BuildingStage;
  readonly asBuilt: StandingCase;
  /** Of what was there before the crew. Nothing for the plan as found. */
  readonly losses: readonly StandingCase[];
}

/** A corner of the ranges, and whether tools pushed. */
export interface CaseOf {
  readonly corner: JointCorner;
  readonly tools: boolean;
}

export interface StandingCase {
  readonly loss: Loss | undefined;
  /** The first case in which it did not hold. */
  readonly failure: StandingFailure | undefined;
  /** Of a loss: the first case in which it did not hold, and the stage before held the same loss. */
  readonly worse: StandingFailure | undefined;
  /**
   * N at worst, by id: normal force of a contact, the sum of what rests on a crib, compression of a strut, tension of a
   * tie. Cases that do not hold are left out.
   */
  readonly loads: ReadonlyMap<string, WorstLoad>;
  /** N of level force that friction takes under a strut's foot, by the id of the strut. */
  readonly thrusts: ReadonlyMap<ElementId, WorstLoad>;
}

export interface WorstLoad extends CaseOf {
  readonly most: number;
  /** Where over 1: what the loss added was counted so many times. */
  readonly sudden?: number;
}

/**
 * Why it does not hold.
 * - `rolls`: it holds once its wheels cannot turn
 * - `slides`: it holds once nothing can slip
 * - `falls`: no forces of its supports hold it, with friction without limit either
 * - `moves too far`: forces that would hold it may exist, but it moves past the limit before they do
 * - `not solved`: no answer. To be taken for falling
 */
export interface StandingFailure extends CaseOf {
  readonly kind: 'rolls' | 'slides' | 'falls' | 'moves too far' | 'not solved';
  /** Bodies and cribs that moved, the farthest first. */
  readonly moved: readonly ElementId[];
}

export interface VehiclePush {
  readonly vehicle: ElementId;
  readonly body: ElementId;
  /** m above the ground. */
  readonly height: number;
  readonly directions: readonly DirectionPush[];
}

/** The worst case of one direction. */
export interface DirectionPush extends CaseOf {
  /** rad, from +x toward +y. */
  readonly angle: number;
  /** N. */
  readonly push: number;
  /** N of the pushed body. */
  readonly weight: number;
  /** How it ended; `cannot stand` where it does not rest without a push. `undefined` where there is no answer. */
  readonly ends: PushEnd | { readonly kind: 'cannot stand' } | undefined;
}
