import type { ElementId } from '@cribwright/model';
import type { Component, JointCorner } from '../loss/components.js';
import type { Scene } from '../statics/index.js';

/** Bodies that hang together, through contacts or ties, and the supports of all stages. */
export type Group = Component;

/** What of the plan is in the scene, and what of it is asked. */
export interface SceneChoice {
  readonly corner: JointCorner;
  /** Supports and chocks that stand. Everything else that the crew puts in is in the scene, and waits. */
  readonly standing: readonly ElementId[];
  /** Whether the tool loads of the plan are on. */
  readonly tools: boolean;
  /** Whether brakes that the plan states as set stop their wheels. */
  readonly brakes: boolean;
}

/** A plan, or the part of it that hangs together, as a scene. The rows are the same for every choice. */
export interface StandingScene {
  readonly scene: Scene;
  /** For each support that the crew puts in, what of the scene comes and goes with it. */
  readonly parts: ReadonlyMap<ElementId, readonly string[]>;
}
