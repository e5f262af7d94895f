// For the other packages of this project: not promised to anyone else.
export { isDate, stands, withAcceptances } from './acceptance/acceptances.js';
export { expectationResults } from './acceptance/expectations.js';
export {
  blameFor,
  type Carrier,
  combination,
  emptyCarriers,
  groupLoad,
  leads,
} from './axle-limits/loaded-axles.js';
export type { CribWorking } from './crib/crib-working.js';
export { fitAdvice, fitOf, fixTo, packingFigure, packingLimits, shimsFigure } from './crib/packing.js';
export { carries, type StepChockWorking, snugGap } from './crib/step-chock-working.js';
export { crossingStiffness } from './crib/stiffness.js';
export { wedgeFigures } from './crib/wedge-figures.js';
export { LoadsLater } from './derived/loads-later.js';
export { setProperty } from './finding/set-property.js';
export { edgeFactor, effectiveShare } from './ground/eccentric.js';
export { gradeFigure } from './ground/grade-figure.js';
export { padSpread } from './ground/pad-spread.js';
export { holds } from './loss/case-run.js';
export { everyMix, jointCorners } from './loss/components.js';
export { type Failure, failureOf, withCorner } from './loss/failures.js';
export type { ComponentRun } from './loss/loss-working.js';
export type { Loss } from './loss/losses.js';
export { type TippingEdge, tippingEdge } from './loss/tipping-edge.js';
export { endsAlone, type TryPlace, thorough, tryRanges } from './loss/try-ranges.js';
export { downGrade } from './mass/gravity.js';
export { pieceName } from './materials/piece-name.js';
export {
  holders,
  type OrderGraph,
  orderGraph,
  putIn,
  stepsHolding,
  stepsPutting,
} from './order/order-graph.js';
export { busiest } from './order/timeline.js';
export { pushContact } from './push/push-contacts.js';
export { towardWords } from './push/toward-words.js';
export { anchorFix } from './remedies/anchor-fix.js';
export { type CaptureOption, captureOptions } from './remedies/capture-options.js';
export { captureFixes, moveClearFix, standingBuildFix } from './remedies/crib-fixes.js';
export { freeName } from './remedies/free-name.js';
export { gearFixes } from './remedies/gear-fixes.js';
export { padText, sidesText } from './remedies/pad-text.js';
export { chockInSteps, workInSteps } from './remedies/step-edits.js';
export { captureStep, lockStep, stepAfter, stepBefore, stepFor } from './remedies/step-fixes.js';
export { mirrorFix, strapFixes } from './remedies/strut-fixes.js';
export { twinFixes } from './remedies/twin-fix.js';
export { at } from './resting/at.js';
export { assumptions } from './results/assumptions.js';
export { beforeLoads, noLoads } from './results/before-loads.js';
export { bodyResults } from './results/body-results.js';
export { supportResults } from './results/support-results.js';
export type { VehicleRose } from './side-push/push-rose.js';
export { pushRose } from './side-push/push-rose.js';
export { clash } from './space/clash.js';
export { nearPairs } from './space/near-pairs.js';
export { overlap } from './space/polygon.js';
export { lengthInside } from './space/through-box.js';
export { whenWords } from './standing/case-words.js';
export { unheldNoses } from './standing/loose-coupling.js';
export type { StandingCase, StandingFailure, StandingGroup, StandingStage } from './standing/standing.js';
export { isUnheldNose } from './standing/unheld-nose.js';
export { whatMoved } from './standing/what-moved.js';
export { inOneGo } from './stepwise/stepwise.js';
export { footFriction, leastFootFriction } from './strut/foot-friction.js';
export { opposite, sideOf, tiesAtFoot } from './strut/pairs.js';
export type { StrutWorking } from './strut/strut-working.js';
export { holdsFoot, type TieWorking } from './strut/tie-working.js';
export type { PlanBody } from './supports/plan-bodies.js';
export { cabBody } from './supports/support-points.js';
export { nameOf } from './supports/support-workings.js';
export { cribUse, type Use, unknownLoad } from './use/crib-use.js';
export { partBearing, partRating } from './use/part-bearing.js';
export { type PartLoad, partLoads, sumOfLoads } from './use/part-loads.js';
export { strutUse } from './use/strut-use.js';
export { tieUse } from './use/tie-use.js';
export { lengthText, placeText, sizeText } from './vehicle/place-words.js';
