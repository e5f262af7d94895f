import type { Box } from '../scene/bounds.js';
import type { Frame, SheetPoint } from '../scene/scene.js';
import type { Point3 } from '../scene/vector.js';
import { type Scale, standardScale } from '../sheet/standard-scale.js';
import { fromAbove, fromBehind, fromDriverSide, type Looking } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { reachOfThings } from '../space/thing-places.js';

/** Takes a place in the plan to the sheet. */
export interface Placing {
  readonly looking: Looking;
  readonly scale: Scale;
  readonly toSheet: (p: Point3) => SheetPoint;
  /** Equal for two placings that put everything at the same place of the sheet. */
  readonly key: string;
  /** Of the things that are placed, on the sheet. */
  readonly box: Box;
  readonly frame: Frame | undefined;
}

/** Fits things into a field of the sheet at a standard scale, centerd across, from `top` down. */
export function fit(
  things: readonly Thing[],
  looking: Looking,
  field: { readonly left: number; readonly right: number; readonly top: number; readonly high: number },
  display: 'us' | 'si',
  besides: readonly Point3[] = [],
): Placing {
  const reach = reachOfThings(things, looking, besides);
  const world = reach.left > reach.right ? { left: 0, top: -1, right: 1, bottom: 0 } : reach;
  const size = { across: world.right - world.left, down: world.bottom - world.top };
  const scale = standardScale(size, { across: field.right - field.left, down: field.high }, display);
  const k = scale.perMeter;
  const left = (field.left + field.right - size.across * k) / 2;
  const [ox, oy] = [left - world.left * k, field.top - world.top * k];
  return {
    looking,
    scale,
    toSheet: (p) => {
      const flat = looking.flat(p);
      return { x: ox + flat.x * k, y: oy + flat.y * k };
    },
    key: `${ox} ${oy} ${k}`,
    box: { left, top: field.top, right: left + size.across * k, bottom: field.top + size.down * k },
    frame: frameOf(looking, ox, oy, k),
  };
}

function frameOf(looking: Looking, ox: number, oy: number, k: number): Frame | undefined {
  if (looking === fromAbove)
    return { across: { axis: 'x', origin: ox, scale: k }, down: { axis: 'y', origin: oy, scale: -k } };
  if (looking === fromDriverSide)
    return { across: { axis: 'x', origin: ox, scale: k }, down: { axis: 'z', origin: oy, scale: -k } };
  if (looking === fromBehind)
    return { across: { axis: 'y', origin: ox, scale: k }, down: { axis: 'z', origin: oy, scale: -k } };
  return undefined;
}
