import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { PlacedTie, Plan, Point3, Strut, Tie } from '@cribwright/model';
import { exactly, given, measured, place } from '@cribwright/model';
import { force, length, placeTie } from '@cribwright/model/internal';
import { leastFootFriction } from './foot-friction.js';

/** A strap, chain or rope with its length and its rating. */
export interface TieWorking {
  readonly tie: Tie;
  readonly length: Figure;
  /** Working load limit. Unknown where nobody knows it. */
  readonly capacity: Figure;
}

export function tieWorking(placed: PlacedTie): TieWorking {
  const { tie } = placed;
  return {
    tie,
    length: measured(
      length('length', term('figure.length'), 'up', { ref: tie.ref }),
      placed.length === undefined ? undefined : exactly(placed.length),
      term('figure.straight-from-end-to-end'),
    ),
    capacity: given(
      force('capacity', term('figure.working-load-limit'), 'down', { ref: tie.ref }),
      tie.gear.rating === undefined ? undefined : exactly(tie.gear.rating),
      tie.gear.source,
    ),
  };
}

/**
 * How a tie holds a strut's base: the share of its pull that acts against the way in which the base would slide, less
 * what a rising tie takes from the friction by lifting the base. At the base, with pull T along (h, v) and axial load
 * S: S cos θ − T h ≤ μ (S sin θ − T v), so T ≥ S (cos θ − μ sin θ) ÷ (h − μ v).
 *
 * A tie to the strut's own head lies along the strut: it takes all of the load that it lets the strut carry.
 */
export function gripOn(tie: Tie, strut: Strut, plan: Plan): number {
  const far = farEnd(tie, strut, plan);
  const placed = place(plan).struts.byId.get(strut.id);
  if (far === undefined || placed === undefined) return 0;
  const { head, foot, run: thrust } = placed;
  const out = { x: foot.x - head.x, y: foot.y - head.y };
  const pull = { x: far.x - foot.x, y: far.y - foot.y };
  const rise = riseOf(tie, strut, plan);
  const size = Math.hypot(pull.x, pull.y, rise);
  if (!(thrust > 0) || !(size > 0)) return 0;
  const friction = leastFootFriction(strut, plan);
  return -(out.x * pull.x + out.y * pull.y) / (thrust * size) - (friction * Math.max(0, rise)) / size;
}

/** Where a tie at a strut's base goes to. Nowhere, where it goes to the strut's own head or to nothing. */
function farEnd(tie: Tie, strut: Strut, plan: Plan): Point3 | undefined {
  const ends = [tie.from, tie.to];
  const here = ends.findIndex((e) => e.kind === 'strut base' && e.strut === strut.id);
  const other = here < 0 ? undefined : ends[1 - here];
  if (other === undefined || (other.kind === 'strut head' && other.strut === strut.id)) return undefined;
  const { around, struts, ties } = place(plan);
  // One that is not in the plan, or changed, is a tie that is tried out.
  const known = ties.byId.get(tie.id);
  const { from, to } =
    known?.tie === tie ? known : placeTie(tie, { vehicles: around.vehicles, struts: struts.byId });
  return here === 0 ? to : from;
}

/** How far it rises from there, m. */
export const riseOf = (tie: Tie, strut: Strut, plan: Plan): number =>
  (farEnd(tie, strut, plan)?.z ?? 0) - (place(plan).struts.byId.get(strut.id)?.foot.z ?? 0);

/** Less than this share of a tie's pull along the thrust is no hold. Common practice, no source. */
const leastGrip = 0.5;

/** Whether a tie holds a strut's base against the thrust, and not across it. */
export const holdsFoot = (tie: Tie, strut: Strut, plan: Plan): boolean =>
  gripOn(tie, strut, plan) >= leastGrip;
