import { computed, given, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { angle, type Display, force, length } from '../figure/units-of.js';
import { between, exactly, type Interval } from '../model/interval.js';
import type { Plan } from '../model/plan.js';
import type { Strut } from '../model/support.js';
import { postFigures } from '../timber/post-capacity.js';
import { footHeight } from './foot-height.js';

/** A strut with what follows from where its head and base are. */
export interface StrutWorking {
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

export function strutWorking(strut: Strut, plan: Plan): StrutWorking {
  const { display } = plan;
  const foot = footHeight(strut, plan.pads);
  const runValue = Math.hypot(strut.foot.x - strut.head.x, strut.foot.y - strut.head.y);
  const riseValue = between(strut.head.z.low - foot, strut.head.z.high - foot);
  const run = measured(
    length(display, 'run', 'run along the ground', 'nearest', {
      ref: strut.foot.ref,
    }),
    exactly(runValue),
    'from under the head to the base',
  );
  const rise = measured(
    length(display, 'rise', 'rise', 'nearest', { ref: strut.head.ref }),
    riseValue,
    'from the base up to the head',
  );
  const reach = computed(
    length(display, 'length', 'length', 'nearest'),
    between(Math.hypot(runValue, riseValue.low), Math.hypot(runValue, riseValue.high)),
    '√({run}² + {rise}²)',
    { run, rise },
  );
  const post = strut.gear.kind === 'timber post' ? postFigures(strut.gear, reach, display) : undefined;
  return {
    strut,
    run,
    rise,
    length: reach,
    angle: computed(
      angle(display, 'angle', 'angle to the ground', 'nearest', {
        ref: strut.foot.ref,
      }),
      between(Math.atan2(riseValue.low, runValue), Math.atan2(riseValue.high, runValue)),
      'atan({rise} ÷ {run})',
      { rise, run },
    ),
    capacity: post?.capacity ?? ratedCapacity(strut, reach, display),
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

function ratedCapacity(strut: Strut, reach: Figure, display: Display): Figure {
  const head = force(display, 'capacity', 'rated load at that length', 'down', {
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
  return computed(
    head,
    load,
    `rating of ${strut.gear.name} at {reach}, the next longer row`,
    { reach },
    source,
  );
}
