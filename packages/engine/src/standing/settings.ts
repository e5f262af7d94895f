import { inch, poundForce } from '@cribwright/units';

/**
 * Numbers of the model in space that no plan states. They decide how load is shared, not whether it is held, except
 * where said. All from memory unless a source is named.
 */

/** N/m along the normal of a strut's base plate on the ground: 100,000 lb/in. */
export const footStiffness = (100_000 * poundForce) / inch;
/** N of a base plate with half its strut: 25 lb. Its friction before it is loaded is of this weight alone. */
export const footWeight = 25 * poundForce;
/** Stiffness across a contact over stiffness along its normal. */
export const shearShare = 0.5;
/** Stretch of a tie at its working load limit, as a share of its length. Webbing is soft. */
export const stretchAtRating = { strap: 0.03, chain: 0.004, 'wire rope': 0.006 } as const;
/** N taken as the rating, for the stiffness alone, of a tie whose rating is not known: 4,000 lb. */
export const ratingForStiffness = 4000 * poundForce;
/** N. What is not known to hold anything: a push ends as soon as it is loaded. Not 0, so that a share of it exists. */
export const unknownCapacity = 1;
/** Friction that stands for a bolted mount or a closed coupling: it holds sideways five times what presses it. */
export const coupledFriction = 5;
/** m. A load case in which something moves farther has not held. */
export const settleLimit = 0.25;
/** m. As found, springs take up the weight: this is no movement. */
export const takeUpLimit = 2;
/** m. A push ends where something has moved farther. */
export const pushLimit = 0.1;
/** An axle in this front share of a vehicle steers, and has no parking brake. Common practice, no source. */
export const steeringShare = 1 / 3;
