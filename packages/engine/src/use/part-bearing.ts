import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Met, Policy } from '@cribwright/model';
import { computed, exactly, given } from '@cribwright/model';
import { area, force, length, limitFigure, sourceOfPart, times } from '@cribwright/model/internal';
import type { CribWorking } from '../crib/crib-working.js';
import { crossingStress } from '../timber/crossing.js';
import { sizeSource } from '../timber/size-source.js';

/**
 * What a contact of a crib carries where a part narrower than its timber bears on it: the stress allowed perpendicular
 * to grain on the area that both share, part width × timber width. A rail may lie along its timber for longer than that;
 * the load comes up through the crossing, so no more counts. On a single point it is part width × part width.
 * `undefined` where the part is as wide as the timber: the crossing below it governs then.
 *
 * The longer the bearing, the lower its factor (NDS 2018, 3.10.4), so that the factor of the whole crossing is used.
 */
export function partBearing(
  { crib }: Pick<CribWorking, 'crib'>,
  { part, vehicle }: Pick<Met, 'part' | 'vehicle'>,
  policy: Policy,
): Figure | undefined {
  const { timber, overhang } = crib;
  if (part.form === 'patch' || part.width >= timber.width - 1e-9) return undefined;
  const stress = crossingStress(timber, overhang, policy);
  const partWidth = given(
    length('partWidth', message('figure.width-of-part', { part: name(part.name) }), 'down', {
      ref: part.ref,
    }),
    exactly(part.width),
    sourceOfPart({ part, vehicle }, 'width'),
  );
  const timberWidth = given(
    length('timberWidth', term('figure.dressed-width'), 'down', { ref: timber.ref }),
    exactly(timber.width),
    sizeSource(timber),
  );
  const along = part.form === 'points' ? partWidth : timberWidth;
  const overlap = computed(
    area('overlap', term('figure.overlap-of-part-and-timber'), 'down'),
    times(partWidth.value, along.value),
    '{partWidth} × {along}',
    { partWidth, along },
  );
  const bears = computed(
    force('bears', term('figure.bearing-of-part-on-timber'), 'down'),
    times(stress.value, overlap.value),
    '{stress} × {overlap}',
    { stress, overlap },
  );
  const use = limitFigure(policy, 'use limit');
  return use.value !== undefined && use.value.low < 1
    ? computed(
        force('bearsAtMost', term('figure.bearing-of-part-on-timber'), 'down'),
        times(use.value, bears.value),
        '{use} × {bears}',
        { use, bears },
      )
    : bears;
}

/** What a part can carry, as stated. `undefined` where the plan states no rating. */
export const partRating = ({ part, vehicle }: Pick<Met, 'part' | 'vehicle'>): Figure | undefined =>
  part.rating === undefined
    ? undefined
    : given(
        force('rating', message('figure.rating-of-part', { part: name(part.name) }), 'down', {
          ref: part.ref,
        }),
        exactly(part.rating),
        sourceOfPart({ part, vehicle }, 'rating'),
      );
