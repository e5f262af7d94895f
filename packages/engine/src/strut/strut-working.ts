import type { Figure } from '@cribwright/messages';
import { inWords, message, name, term } from '@cribwright/messages';
import type { PlacedStrut, Strut } from '@cribwright/model';
import { between, computed, exactly, given, type Interval, measured } from '@cribwright/model';
import { angle, force, length } from '@cribwright/model/internal';
import { postFigures } from '../timber/post-capacity.js';

/** A strut with what follows from where its head and base are. */
export interface StrutWorking {
  readonly placed: PlacedStrut;
  readonly strut: Strut;
  /** From under the head to the base, along the ground. */
  readonly run: Figure;
  readonly rise: Figure;
  readonly length: Figure;
  /** To the ground. */
  readonly angle: Figure;
  /** Along the strut, at that length. Unknown where no rating covers it. */
  readonly capacity: Figure;
  /** Of a timber post: length over least depth. */
  readonly slenderness: Figure | undefined;
}

export function strutWorking(placed: PlacedStrut): StrutWorking {
  const { strut } = placed;
  const run = measured(
    length('run', term('figure.run-along-the-ground'), 'nearest', {
      ref: strut.foot.ref,
    }),
    exactly(placed.run),
    term('figure.from-under-the-head-to-the-foot'),
  );
  const rise = measured(
    length('rise', term('figure.rise'), 'nearest', { ref: strut.head.ref }),
    placed.rise,
    term('figure.from-the-foot-up-to-the-head'),
  );
  const reach = computed(
    length('length', term('figure.length'), 'nearest'),
    placed.length,
    'sqrt({run}² + {rise}²)',
    { run, rise },
  );
  const post = strut.gear.kind === 'timber post' ? postFigures(strut.gear, reach) : undefined;
  return {
    placed,
    strut,
    run,
    rise,
    length: reach,
    angle: computed(
      angle('angle', term('figure.angle-to-the-ground'), 'nearest', {
        ref: strut.foot.ref,
      }),
      placed.angle,
      'arctan({rise} ÷ {run})',
      { rise, run },
    ),
    capacity: post?.capacity ?? ratedCapacity(strut, reach),
    slenderness: post?.slenderness,
  };
}

/**
 * Rated load at a length: the table's row for that length or the next longer one, never between rows and never
 * beyond the table.
 */
export function ratedLoad(
  ratings: readonly { readonly length: number; readonly load: number }[],
  at: number,
): number | undefined {
  return ratings.filter((r) => r.length >= at - 1e-9).sort((a, b) => a.length - b.length)[0]?.load;
}

function ratedCapacity(strut: Strut, reach: Figure): Figure {
  const head = force('capacity', term('figure.rated-load-at-that-length'), 'down', {
    ref: strut.gear.ref,
  });
  if (strut.gear.kind === 'timber post') return given(head, undefined, { kind: 'unknown' });
  const { ratings, source, shortest, longest } = strut.gear;
  const value = reach.value;
  const fits = value !== undefined && value.low >= shortest - 1e-9 && value.high <= longest + 1e-9;
  const ends: (number | undefined)[] = fits
    ? [ratedLoad(ratings, value.high), ratedLoad(ratings, value.low)]
    : [];
  const [low, high] = ends;
  const load: Interval | undefined = low === undefined || high === undefined ? undefined : between(low, high);
  return measured(
    head,
    load,
    message('figure.rating-at', { strut: name(strut.gear.name), reach: inWords(reach) }),
    source,
  );
}
