import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { Crib, Plan } from '@cribwright/model';
import { computed, exactly, given } from '@cribwright/model';
import { angle, count, force, limitFigure } from '@cribwright/model/internal';
import { pairDriveForces, slippingWedge, steepestTaper } from './wedge-drive.js';

const statics = {
  kind: 'published',
  title: 'Baker and Haynes, Engineering Statics: Open and Interactive',
  locator: 'chapter 9, wedges: equilibrium of the wedge and of its load',
} as const;

/**
 * Of a crib whose wedges are driven to a stated preload: the steepest slope at which they stay by themselves, and the
 * least push that drives them. How steep they are cut is not in a plan, so neither is compared. Empty when snug.
 */
export function wedgeFigures(crib: Crib, { policy }: Plan): readonly Figure[] {
  const { wedges } = crib;
  if (wedges === undefined || wedges.pairs <= 0 || !(wedges.preload > 0)) return [];
  const ref = { element: crib.id, property: 'wedges' };
  const between = limitFigure(policy, 'friction timber on timber');
  const metal = limitFigure(policy, 'friction timber on metal');
  const [onTimber, onMetal] = [between.value?.low, metal.value?.low];
  // The pair lies on timber and bears against the part: the face that grips least lets go first.
  const flat = (onMetal ?? 0) <= (onTimber ?? 0) ? metal : between;
  const pair =
    onTimber === undefined || onMetal === undefined
      ? undefined
      : { taper: 0, slopeFriction: onTimber, lowerFriction: onTimber, upperFriction: onMetal };
  const preload = given(
    force('preload', term('figure.preload-of-the-wedges'), 'down', { ref }),
    exactly(wedges.preload),
    { kind: 'stated' },
  );
  const pairs = given(count('pairs', term('figure.pairs-of-wedges'), 'up', { ref }), exactly(wedges.pairs), {
    kind: 'stated',
  });
  const pushes = pair && pairDriveForces(pair, wedges.preload / wedges.pairs);
  return [
    computed(
      angle('wedgeSlope', term('figure.steepest-wedge-that-stays-by-itself'), 'down', {
        ref,
        assumes: [term('figure.wedges-dry-and-without-grease-ice-or')],
      }),
      pair && exactly(steepestTaper(slippingWedge(pair))),
      'arctan({between}) + arctan({flat})',
      { between, flat },
      statics,
    ),
    computed(
      force('wedgeDrive', term('figure.push-on-each-end-of-a-pair'), 'down', {
        ref,
        assumes: [term('figure.the-slimmest-of-wedges-both-ends-driven')],
      }),
      pushes && exactly(Math.min(pushes.lower, pushes.upper)),
      '{preload} ÷ {pairs} × ({between} + {flat})',
      { preload, pairs, between, flat },
      statics,
    ),
  ];
}
