import { exceeds } from '@cribwright/units';

/**
 * The federal limits on what axles carry: 23 CFR 658.17 and 23 U.S.C. 127(a). A check of what somebody typed
 * (`a wrong axle load`), not of safety: a truck in a ditch may well be overweight.
 *
 * The law's own units, lb and ft, are kept here: its formula and its rounding have no sense in others.
 */

/** Axles closer than this are one axle; farther, and up to the tandem's length, a tandem. 23 CFR 658.17. */
const SINGLE_SPREAD = 40 / 12;
const TANDEM_SPREAD = 8;
/** Two tandems this long from first to last axle may carry 34,000 lb each, whatever the formula says. */
const EXCEPTION_LENGTH = 36;
const STEP = 500;

/** Weights that the law allows. */
export interface AxleLimits {
  /** One axle, lb. */
  readonly single: number;
  /** Two axles that count as a tandem, together, lb. */
  readonly tandem: number;
  /** The whole vehicle, lb. */
  readonly gross: number;
}

/** 23 CFR 658.17 (b), (c), (d), lb. */
export const federalLimits: AxleLimits = { single: 20_000, tandem: 34_000, gross: 80_000 };

/**
 * W = 500 (L N / (N − 1) + 12 N + 36), to the nearest 500 lb, ties down. 23 CFR 658.17 (e).
 *
 * @param length L, ft, outer axle to outer axle: whole feet, as in the published table
 * @param axles N, two or more
 */
export function bridgeFormula(length: number, axles: number): number {
  const raw = STEP * ((length * axles) / (axles - 1) + 12 * axles + 36);
  return Math.ceil(raw / STEP - 0.5 - 1e-9) * STEP;
}

/** An axle as the formula sees it. */
export interface AxleLoad {
  /** Along the vehicle, ft. */
  readonly at: number;
  /** lb */
  readonly load: number;
}

/** A run of consecutive axles and what it may carry. Numbers in lb and ft; axles counted from 1. */
export interface AxleGroup {
  readonly first: number;
  readonly last: number;
  readonly length: number;
  readonly load: number;
  readonly limit: number;
  readonly by: 'single' | 'tandem' | 'bridge formula' | 'two tandems 36 ft apart' | 'gross';
}

/**
 * Every run of consecutive axles with its limit, the interior ones too: a truck may be legal on every axle and as
 * a whole, and over in between.
 *
 * @param axles front to rear
 */
export function axleGroups(
  axles: readonly AxleLoad[],
  limits: AxleLimits = federalLimits,
): readonly AxleGroup[] {
  const groups: AxleGroup[] = [];
  for (let first = 0; first < axles.length; first++) {
    for (let last = first; last < axles.length; last++) {
      const run = axles.slice(first, last + 1);
      const length = (run.at(-1)?.at ?? 0) - (run[0]?.at ?? 0);
      const load = run.reduce((sum, a) => sum + a.load, 0);
      groups.push({ first: first + 1, last: last + 1, length, load, ...limitOf(run, length, limits) });
    }
  }
  return groups;
}

/** The groups that carry more than they may. */
export const overweight = (groups: readonly AxleGroup[]): readonly AxleGroup[] =>
  groups.filter((g) => exceeds(g.load, g.limit));

function limitOf(
  run: readonly AxleLoad[],
  length: number,
  limits: AxleLimits,
): Pick<AxleGroup, 'limit' | 'by'> {
  const slack = 1e-6;
  if (length <= SINGLE_SPREAD + slack) return { limit: limits.single, by: 'single' };
  if (length <= TANDEM_SPREAD + slack) return { limit: limits.tandem, by: 'tandem' };
  // The table's row for 8 ft stands for all above 8 ft that round to it; the tandem limit ends at 8 ft sharp.
  const formula = bridgeFormula(Math.max(Math.round(length), TANDEM_SPREAD), run.length);
  const exception = isTwoTandems(run) && length >= EXCEPTION_LENGTH - slack ? 2 * limits.tandem : 0;
  const limit = Math.max(formula, exception);
  if (limit > limits.gross) return { limit: limits.gross, by: 'gross' };
  if (exception > formula) return { limit, by: 'two tandems 36 ft apart' };
  return { limit, by: 'bridge formula' };
}

/** Four axles that make two tandems. */
function isTwoTandems(run: readonly AxleLoad[]): boolean {
  const [a, b, c, d, ...more] = run.map((axle) => axle.at);
  if (a === undefined || b === undefined || c === undefined || d === undefined || more.length > 0)
    return false;
  const pair = (x: number, y: number) => y - x > SINGLE_SPREAD && y - x <= TANDEM_SPREAD;
  return pair(a, b) && pair(c, d);
}
