/**
 * Posts and tubes pressed along their length. Pinned at both ends, straight, loaded through the middle.
 * All in SI: Pa, m, N.
 */

/** `c` of NDS 3.7.1.5 for sawn lumber. */
const SAWN = 0.8;

/** Slenderness that NDS 3.7.1.4 allows in service: a ratio. */
export const MOST_SLENDER = 50;
/** Slenderness that NDS 3.7.1.4 allows while erecting: a ratio. */
export const MOST_SLENDER_ERECTING = 75;

/** `le / d`: length between braced points over the section's depth in the way it would bend. NDS 3.7.1.3. */
export const slenderness = (length: number, depth: number): number => length / depth;

/**
 * Critical buckling stress FcE = 0.822 Emin′ / (le/d)². NDS 3.7.1.5.
 *
 * @param modulusMin Emin′: the minimum modulus with its service factors, Pa
 */
export const bucklingStress = (modulusMin: number, slender: number): number =>
  (0.822 * modulusMin) / slender ** 2;

/**
 * Column stability factor Cp, 0 to 1: what buckling leaves of the stress parallel to grain. NDS 3.7.1.5,
 * equation 3.7-1.
 *
 * @param parallelToGrain Fc*: the value parallel to grain with every factor but Cp, Pa
 * @param factor Kf of a built-up post (NDS 15.3.2); 1 for a solid one
 */
export function columnStability(
  parallelToGrain: number,
  modulusMin: number,
  slender: number,
  factor = 1,
): number {
  const ratio = bucklingStress(modulusMin, slender) / parallelToGrain;
  // A post with no length cannot buckle; the formula would divide infinity by itself.
  if (!Number.isFinite(ratio)) return 1;
  const half = (1 + ratio) / (2 * SAWN);
  // The same root as half − √(half² − ratio/c), without the loss of digits where ratio is large.
  return (factor * (ratio / SAWN)) / (half + Math.sqrt(half ** 2 - ratio / SAWN));
}

/** Euler's load of a pinned strut, π² E I / L², N. */
export const eulerLoad = (modulus: number, inertia: number, length: number): number =>
  (Math.PI ** 2 * modulus * inertia) / length ** 2;

/**
 * Load at which a straight pinned strut fails: Euler's, but never more than squashes it (yield × area). Euler's
 * alone grows without end as a strut gets shorter.
 */
export const strutFailureLoad = (
  section: {
    readonly modulus: number;
    readonly yield: number;
    readonly area: number;
    readonly inertia: number;
  },
  length: number,
): number =>
  length > 0
    ? Math.min(eulerLoad(section.modulus, section.inertia, length), section.yield * section.area)
    : section.yield * section.area;

/**
 * Area, m², and second moment of area, m⁴, of a round tube.
 *
 * @param outer outer radius, m
 * @param inner inner radius, m; less than the outer one
 */
export const tube = (outer: number, inner: number): { readonly area: number; readonly inertia: number } => ({
  area: Math.PI * (outer ** 2 - inner ** 2),
  inertia: (Math.PI / 4) * (outer ** 4 - inner ** 4),
});
