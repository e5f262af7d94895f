/**
 * A wedge under a load, at the point of moving. Dry friction on both of its faces, weight of the wedge left out.
 * Source: Baker and Haynes, Engineering Statics: Open and Interactive, chapter 9, section on wedges, from whose
 * equilibrium of block and wedge the closed forms below follow with friction angles φ = atan μ.
 */
export interface Wedge {
  /** From the flat face to the sloped one, rad, from 0 to less than a right angle. */
  readonly taper: number;
  /** Friction on the sloped face: a ratio of forces. */
  readonly slopeFriction: number;
  /** Friction on the flat face, which is square to the load: a ratio of forces. */
  readonly flatFriction: number;
}

/** Two equal wedges, thin end over thin end of the other: sloped faces together, flat faces out. */
export interface WedgePair {
  /** Of each wedge, rad, from 0 to less than a right angle. */
  readonly taper: number;
  /** Friction between the two: a ratio of forces. */
  readonly slopeFriction: number;
  /** Friction on what the pair stands on: a ratio of forces. */
  readonly lowerFriction: number;
  /** Friction on what it carries: a ratio of forces. */
  readonly upperFriction: number;
}

const { atan, tan, min } = Math;

/**
 * Push along the flat face that drives one wedge in under `load`, in the unit of `load`:
 * load × (tan(taper + φ slope) + μ flat). Endless where friction holds it whatever the push.
 */
export function driveForce(wedge: Wedge, load: number): number {
  const lean = wedge.taper + atan(wedge.slopeFriction);
  return lean >= Math.PI / 2 ? Number.POSITIVE_INFINITY : load * (tan(lean) + wedge.flatFriction);
}

/**
 * Push that keeps one wedge from slipping back out, in the unit of `load`: load × (tan(taper − φ slope) − μ flat).
 * Below zero it stays by itself, and that much pull draws it.
 */
export const keepForce = (wedge: Wedge, load: number): number =>
  load * (tan(wedge.taper - atan(wedge.slopeFriction)) - wedge.flatFriction);

/** Steepest taper, rad, at which one wedge stays by itself: friction angle of the slope and of the flat face together. */
export const steepestTaper = (wedge: Omit<Wedge, 'taper'>): number =>
  atan(wedge.slopeFriction) + atan(wedge.flatFriction);

/** Whether one wedge stays in by friction alone, with no push on it. */
export const staysByItself = (wedge: Wedge): boolean => wedge.taper <= steepestTaper(wedge);

/**
 * The wedge of a pair that slips first. Level forces through a pair are the same from top to bottom, so that what
 * lets go is the slope and the one flat face that grips least.
 */
export const slippingWedge = (pair: WedgePair): Wedge => ({
  taper: pair.taper,
  slopeFriction: pair.slopeFriction,
  flatFriction: min(pair.lowerFriction, pair.upperFriction),
});

/**
 * Push at each end of a pair, both at once, against what its own flat face rubs on, in the unit of `load`. Endless
 * where friction holds it whatever the push.
 */
export const pairDriveForces = (
  pair: WedgePair,
  load: number,
): { readonly lower: number; readonly upper: number } => ({
  lower: driveForce({ ...pair, flatFriction: pair.lowerFriction }, load),
  upper: driveForce({ ...pair, flatFriction: pair.upperFriction }, load),
});
