import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Plan, Strut } from '@cribwright/model';
import { computed, exactly, given, type Interval } from '@cribwright/model';
import { limitFigure, limitValue, padUnder, ratio } from '@cribwright/model/internal';

/**
 * Friction under the foot of a strut: the least of its base plate, of the pad under it and of the surface. A slide takes
 * the weakest of the faces that lie on each other.
 *
 * The policy gives the base plate. Timber on the surface has a friction of its own: under a post, and under a pad of
 * timber or plywood. What any other plate or pad is made of is not known well enough, so the least that the surface
 * gives to tires, timber and metal counts. A friction of metal that is not known is left out there.
 */
export function footFriction(strut: Strut, plan: Plan): Figure {
  const plate = limitFigure(plan.policy, 'friction strut base');
  const { surface } = plan.ground;
  const below = surfaceFriction(strut, plan);
  const onSurface = given(
    ratio('onSurface', message('figure.friction-of-the-base-on', { surface: name(surface.name) }), 'down', {
      ref: surface.ref,
    }),
    exactly(below),
    surface.frictionSource,
  );
  const value = leastOf(plate.value, below);
  return computed(
    ratio('footFriction', term('figure.friction-under-the-base'), 'down'),
    value,
    'min({plate}, {onSurface})',
    { plate, onSurface },
  );
}

/** The same as a plain number. A policy without one lets nothing be held by friction. */
export const leastFootFriction = (strut: Strut, plan: Plan): number =>
  leastOf(limitValue(plan.policy, 'friction strut base'), surfaceFriction(strut, plan))?.low ?? 0;

const leastOf = (plate: Interval | undefined, below: number): Interval | undefined =>
  plate && { low: Math.min(plate.low, below), high: Math.min(plate.high, below) };

function surfaceFriction(strut: Strut, { ground: { surface }, pads }: Plan): number {
  const pad = padUnder(strut.id, strut.foot.pad, pads);
  const timber =
    pad === undefined
      ? strut.gear.kind === 'timber post'
      : pad.material === 'timber' || pad.material === 'plywood';
  return timber
    ? surface.frictionTimber.low
    : Math.min(
        surface.frictionTimber.low,
        surface.frictionTire.low,
        surface.frictionBody?.low ?? Number.POSITIVE_INFINITY,
      );
}
