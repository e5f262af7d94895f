import { unknownLoad, useOf } from '../crib/crib-use.js';
import { computed, given, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { type Display, force, length, ratio } from '../figure/units-of.js';
import { exactly, type Interval } from '../model/interval.js';
import type { Plan } from '../model/plan.js';
import type { Strut, Tie } from '../model/support.js';
import { limitValue } from '../policy/limit.js';
import type { Workings } from '../workings/workings.js';
import { anchorPlace, type Place } from './anchor-place.js';
import { footHeight } from './foot-height.js';
import type { StrutWorking } from './strut-working.js';

/** A strap, chain or rope with its length and its rating. */
export interface TieWorking {
  readonly tie: Tie;
  readonly length: Figure;
  /** Working load limit. Unknown where nobody knows it. */
  readonly capacity: Figure;
}

export function tieWorking(tie: Tie, plan: Plan): TieWorking {
  const { display } = plan;
  const from = anchorPlace(tie.from, plan);
  const to = anchorPlace(tie.to, plan);
  const span =
    from === undefined || to === undefined
      ? undefined
      : exactly(Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z));
  return {
    tie,
    length: computed(
      length(display, 'length', 'length', 'up', { ref: tie.ref }),
      span,
      'straight from end to end',
      {},
    ),
    capacity: given(
      force(display, 'capacity', 'working load limit', 'down', { ref: tie.ref }),
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
  if (far === undefined) return 0;
  const out = { x: strut.foot.x - strut.head.x, y: strut.foot.y - strut.head.y };
  const pull = { x: far.x - strut.foot.x, y: far.y - strut.foot.y };
  const rise = riseOf(tie, strut, plan);
  const thrust = Math.hypot(out.x, out.y);
  const size = Math.hypot(pull.x, pull.y, rise);
  if (!(thrust > 0) || !(size > 0)) return 0;
  const friction = limitValue(plan.policy, 'friction strut base')?.low ?? 0;
  return -(out.x * pull.x + out.y * pull.y) / (thrust * size) - (friction * Math.max(0, rise)) / size;
}

/** Where a tie at a strut's base goes to. Nowhere, where it goes to the strut's own head or to nothing. */
function farEnd(tie: Tie, strut: Strut, plan: Plan): Place | undefined {
  const ends = [tie.from, tie.to];
  const here = ends.findIndex((e) => e.kind === 'strut base' && e.strut === strut.id);
  const other = here < 0 ? undefined : ends[1 - here];
  if (other === undefined || (other.kind === 'strut head' && other.strut === strut.id)) return undefined;
  return anchorPlace(other, plan);
}

/** How far it rises from there, m. */
const riseOf = (tie: Tie, strut: Strut, plan: Plan): number =>
  (farEnd(tie, strut, plan)?.z ?? 0) - footHeight(strut, plan.pads);

/** Less than this share of a tie's pull along the thrust is no hold. Common practice, no source. */
const leastGrip = 0.5;

/** Whether a tie holds a strut's base against the thrust, and not across it. */
export const holdsFoot = (tie: Tie, strut: Strut, plan: Plan): boolean =>
  gripOn(tie, strut, plan) >= leastGrip;

/**
 * What a tie has to take from a strut: the thrust at the base that friction does not hold, T = S (cos θ − μ sin θ),
 * over the share of the tie's pull that acts against it.
 */
export function footTension(s: StrutWorking, tie: Tie, w: Workings): Figure {
  const { display } = w.plan;
  const load = w.loads().get(s.strut.id)?.load ?? unknownLoad(display);
  const friction = w.limit('friction strut base');
  const grip = measured(
    ratio(display, 'grip', 'share of the pull along the thrust', 'down'),
    exactly(gripOn(tie, s.strut, w.plan)),
    riseOf(tie, s.strut, w.plan) > 0
      ? 'between the strap and the way the base would slide, less what its rise takes from friction'
      : 'between the strap and the way the base would slide, seen from above',
  );
  return computed(
    force(display, 'load', `pull from strut ${s.strut.name}`, 'up', { governs: load.governs }),
    tension(load.value, s.angle.value, friction.value, grip.value),
    '{load} × (cos {angle} − {friction} × sin {angle}) ÷ {grip}',
    { load, angle: s.angle, friction, grip },
  );
}

function tension(
  load: Interval | undefined,
  angle: Interval | undefined,
  friction: Interval | undefined,
  grip: Interval | undefined,
): Interval | undefined {
  if (load === undefined || angle === undefined || friction === undefined || grip === undefined)
    return undefined;
  if (!(grip.low > 0)) return undefined;
  const at = (s: number, t: number) => (s * Math.max(0, Math.cos(t) - friction.low * Math.sin(t))) / grip.low;
  return { low: at(load.low, angle.high), high: at(load.high, angle.low) };
}

/** The greatest pull on a tie over the bases that it holds, with its pretension, beside its rating. */
export function tieUse(t: TieWorking, w: Workings): { readonly load: Figure; readonly use: Figure } {
  const { display } = w.plan;
  const pulls = [t.tie.from, t.tie.to].flatMap((end) => {
    const s = end.kind === 'strut base' ? w.struts().find((k) => k.strut.id === end.strut) : undefined;
    return s === undefined ? [] : [footTension(s, t.tie, w)];
  });
  const load = total(pulls, t.tie, display);
  return { load, use: useOf(load, t.capacity, display) };
}

function total(pulls: readonly Figure[], tie: Tie, display: Display): Figure {
  const pretension = given(
    force(display, 'pretension', 'pretension', 'up', { ref: { element: tie.id, property: 'tension' } }),
    exactly(tie.pretension),
    { kind: 'stated' },
  );
  const worst = pulls.reduce<Figure | undefined>(
    (most, next) =>
      most === undefined ||
      next.value === undefined ||
      next.value.high > (most.value?.high ?? Number.POSITIVE_INFINITY)
        ? next
        : most,
    undefined,
  );
  const head = force(display, 'load', 'pull', 'up', { governs: worst?.governs });
  if (worst === undefined) return computed(head, pretension.value, '{pretension}', { pretension });
  // The strap is either pulled up by hand or pulled by the base: the larger of the two, not their sum.
  const value =
    worst.value === undefined
      ? undefined
      : {
          low: Math.max(worst.value.low, tie.pretension),
          high: Math.max(worst.value.high, tie.pretension),
        };
  return tie.pretension > 0
    ? computed(head, value, 'larger of {pretension} and {pull}', { pretension, pull: worst })
    : computed(head, value, '{pull}', { pull: worst });
}
