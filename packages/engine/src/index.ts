export { type Build, bestBuildFor, buildsFor, type Stock, stockOf } from './alternatives/builds.js';
export type {
  Analysis,
  BodyResult,
  ContactResult,
  ExpectationResult,
  GroundResult,
  LoadCase,
  MaterialsResult,
  PaperTrail,
  PushResult,
  Reaction,
  StageResult,
  SupportResult,
  TimelineResult,
} from './analysis/analysis.js';
export {
  type AxleGroup,
  type AxleLimits,
  type AxleLoad,
  axleGroups,
  bridgeFormula,
  federalLimits,
  overweight,
} from './axle-limits/bridge-formula.js';
export { caution } from './caution.js';
export {
  driveForce,
  keepForce,
  pairDriveForces,
  slippingWedge,
  staysByItself,
  steepestTaper,
  type Wedge,
  type WedgePair,
} from './crib/wedge-drive.js';
export { pushSystems, restingSystems } from './derived/finished-systems.js';
export { type Workings, workingsOf } from './derived/workings.js';
export { elementMessage } from './element/element-message.js';
export type { Finding, Fix, Severity } from './finding/finding.js';
export { type Counted, type Tally, tally } from './finding/tally.js';
export type { LinearProgram } from './linear-program/linear-program.js';
export { shareBounds } from './loss/reaction-bounds.js';
export { gravityOn } from './mass/gravity.js';
export { type HeldPush, heldPush } from './push/held-push.js';
export { program } from './push/program.js';
export type { Program } from './push/push-program.js';
export type {
  Push,
  PushBody,
  PushContact,
  PushStrut,
  PushSystem,
  PushTie,
  Stack,
  TieEnd,
} from './push/push-system.js';
export { rest } from './resting/rest.js';
export type {
  Memory,
  Motion,
  Outcome,
  Rest,
  RestingBody,
  RestingSystem,
  Rests,
  Spring,
} from './resting/system.js';
export { unchecked } from './results/unchecked.js';
export type { Vector } from './space/vectors.js';
/**
 * One quasi-static model in space for vehicles, cribs taken as stacks, struts and ties: what stands, what a loss does,
 * how hard a push is held. SI. What it assumes stands in `statics/README.md`.
 */
export * as statics from './statics/index.js';
export type { AnalyzeOptions } from './supports/support-workings.js';
export { bearingLengthFactor, wetServiceFactor } from './timber/bearing-factors.js';
export {
  bucklingStress,
  columnStability,
  eulerLoad,
  MOST_SLENDER,
  MOST_SLENDER_ERECTING,
  slenderness,
  strutFailureLoad,
  tube,
} from './timber/column.js';
export { crossingArea, crossingCapacity, crossingStress, speciesStress } from './timber/crossing.js';
