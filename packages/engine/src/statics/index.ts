export { problemsOf, type SceneProblem } from './check-scene.js';
export { type Imbalance, imbalanceOf } from './equilibrium.js';
export { type AxialForce, type ContactForce, type Forces, type Use, usesOf } from './forces.js';
export { lose } from './loss.js';
export type { Falls, NotProven, NotSolved, NotSolvedReason, Outcome, Rests } from './outcome.js';
export { place } from './place.js';
export { type Motion, proofOfFalling } from './proof-of-falling.js';
export { type Held, type PushEnd, type PushResult, push } from './push.js';
export { pushRose, type RosePush } from './push-rose.js';
export type * from './scene.js';
export { balanceTolerance, settle } from './settle.js';
export {
  type AxialState,
  type BodyState,
  type ContactState,
  type FootState,
  type Presence,
  type State,
  start,
} from './state.js';
