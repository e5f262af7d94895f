export { computed, given, type Head, measured, renamed } from './figure/compute.js';
export { shippedPolicy } from './generated/shipped-policy.js';
export { planWith } from './new-plan/plan-with.js';
export type { Contact, Met } from './placed/contacts.js';
export { dressed } from './placed/dressed.js';
export { type PlanPoint, type Point3, stepToPlan, toPlan, toVehicle } from './placed/frame.js';
export { band, type Extent, type Outline, rectangle } from './placed/outline.js';
export { crossings as crossmemberPlaces, partNamed, pieces } from './placed/part-place.js';
export { type Placed, type PlacedPlan, place } from './placed/place.js';
export type { PlacedChock } from './placed/place-chock.js';
export type { PlacedCrib } from './placed/place-crib.js';
export type { PlacedPad } from './placed/place-pad.js';
export { type PlacedStepChock, stepChockSize } from './placed/place-step-chock.js';
export type { PlacedStrut } from './placed/place-strut.js';
export type { PlacedTie } from './placed/place-tie.js';
export { bodyTop, type PlacedVehicle, type PlacedWheel, placeVehicle } from './placed/place-vehicle.js';
export { poseOf } from './placed/pose.js';
export { posed } from './placed/posed.js';
export {
  baseTimbers,
  type Course,
  type Crossing,
  contactWidths,
  courseHeight,
  coursesOf,
  crossings,
  heightWithShims,
  narrowWidth,
  timberCount,
} from './placed/stack.js';
export { underside, undersideAlong } from './placed/underside.js';
export { add, between, exactly, hull, type Interval, isExact, scale, subtract } from './plan/interval.js';
export type {
  Acceptance,
  Crew,
  Egress,
  Expectation,
  Ground,
  Plan,
  RespondingUnit,
  SizeUpItem,
  Step,
  StepAction,
  StockItem,
  Surface,
  UnreadPart,
  WorkingLoad,
} from './plan/plan.js';
export type { PlanEdit } from './plan/plan-edit.js';
export type { Policy, PolicyKey, PolicyLimit } from './plan/policy.js';
export type { ElementId, Ref } from './plan/ref.js';
export type { Dock, Site } from './plan/site.js';
export type {
  Anchor,
  Capture,
  Chock,
  Crib,
  Pad,
  PadMaterial,
  StandsOn,
  StepChock,
  Strut,
  StrutGear,
  Support,
  SupportKind,
  SupportOf,
  Tie,
  Timber,
} from './plan/support.js';
export { byKind, type PerSupportKind, supportsOf } from './plan/supports-of.js';
export type { Axle, Cab, Cargo, Part, Vehicle, VehicleContact, VehiclePosition } from './plan/vehicle.js';
export { limitKinds } from './policy/limit.js';
