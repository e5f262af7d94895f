/**
 * A timber post pressed along its length: straight, pinned at both ends, loaded through its middle. NDS 3.7.1,
 * and 15.3 for one built up of plies. Load duration counts as normal (CD = 1): a crew may wait beside it for hours.
 */
import { computed, given, measured } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { each, lesser, times } from '../figure/interval-math.js';
import { area, type Display, force, length, ratio, stress } from '../figure/units-of.js';
import { exactly } from '../model/interval.js';
import type { SourceNote } from '../model/source-note.js';
import type { StrutGear } from '../model/support.js';
import { columnStability, slenderness } from './column.js';

export type Post = Extract<StrutGear, { readonly kind: 'timber post' }>;

export interface PostFigures {
  readonly slenderness: Figure;
  /** Along the post. Unknown where the length is. */
  readonly capacity: Figure;
}

/** Kf of nailed plies that bend across the nails. NDS 15.3.2. Bolted ones may count 0.75. */
const NAILED = 0.6;
/** Wet service factors: parallel to grain, and on the modulus. NDS Supplement Table 4A, from memory. */
const WET_ALONG = 0.8;
const WET_MODULUS = 0.9;

const nds = (locator: string): SourceNote => ({ kind: 'published', title: 'NDS 2018', locator });

/** A way in which a post may bend: the depth of its section in that way, and Kf. */
interface Bending {
  readonly depth: number;
  readonly factor: number;
}

/** The two ways in which a post may bend: across its plies and along them. */
function bendings({ timber, plies }: Post): readonly [across: Bending, along: Bending] {
  const thin = Math.min(timber.width, timber.depth);
  const wide = Math.max(timber.width, timber.depth);
  return [
    { depth: thin * plies, factor: plies > 1 ? NAILED : 1 },
    { depth: wide, factor: 1 },
  ];
}

/** Slenderness and capacity of a post at the length that its head and base give. */
export function postFigures(post: Post, reach: Figure, display: Display): PostFigures {
  const { timber, plies, ref } = post;
  const [acrossPlies, alongThem] = bendings(post);
  const depth = given(
    length(display, 'leastDepth', plies > 1 ? 'least depth of the plies together' : 'least depth', 'down', {
      ref,
    }),
    exactly(thinner(acrossPlies, alongThem).depth),
    timber.source,
  );
  const slender = computed(
    ratio(display, 'slenderness', 'slenderness', 'up', { ref }),
    each(reach.value, (l) => slenderness(l, depth.value?.low ?? Number.NaN)),
    '{reach} ÷ {depth}',
    { reach, depth },
    nds('3.7.1.3'),
  );
  const wet = timber.wet;
  const along = given(
    stress(
      display,
      'parallelToGrain',
      wet ? 'stress parallel to grain, wet (× 0.8)' : 'stress parallel to grain',
      'down',
      {
        ref: timber.ref,
      },
    ),
    exactly(timber.parallelToGrain * (wet ? WET_ALONG : 1)),
    timber.source,
  );
  const modulus = given(
    stress(display, 'modulusMin', wet ? 'least modulus, wet (× 0.9)' : 'least modulus', 'down', {
      ref: timber.ref,
    }),
    exactly(timber.modulusMin * (wet ? WET_MODULUS : 1)),
    timber.source,
  );
  const across = stabilityFigure({ reach, along, modulus }, acrossPlies, 'across its plies', display);
  const alongPlies = stabilityFigure({ reach, along, modulus }, alongThem, 'along its plies', display);
  const stability =
    plies > 1
      ? computed(
          ratio(display, 'stability', 'what buckling leaves (Cp)', 'down'),
          lesser(across.value, alongPlies.value),
          'lesser of {across} and {alongPlies}',
          { across, alongPlies },
          nds('3.7.1.5; 15.3.2, nailed plies'),
        )
      : stabilityFigure({ reach, along, modulus }, thinner(acrossPlies, alongThem), '', display);
  const section = given(
    area(display, 'section', 'section', 'down', { ref: timber.ref }),
    exactly(timber.width * timber.depth * plies),
    timber.source,
  );
  return {
    slenderness: slender,
    capacity: computed(
      force(display, 'capacity', 'capacity along the post', 'down', {
        ref,
        governs:
          reach.value !== undefined && reach.value.low !== reach.value.high
            ? 'the longest it may be'
            : undefined,
        assumes: ['the post is straight, its ends are cut square and it is loaded through the middle'],
      }),
      times(times(section.value, along.value), stability.value),
      '{section} × {along} × {stability}',
      { section, along, stability },
    ),
  };
}

const thinner = (a: Bending, b: Bending): Bending => (b.depth < a.depth ? b : a);

/** What buckling leaves in one way of bending. */
function stabilityFigure(
  { reach, along, modulus }: { readonly reach: Figure; readonly along: Figure; readonly modulus: Figure },
  { depth, factor }: Bending,
  way: string,
  display: Display,
): Figure {
  const [most, least] = [along.value, modulus.value];
  const thick = measured(
    length(display, 'depth', way === '' ? 'least depth' : `depth ${way}`, 'down'),
    exactly(depth),
    'of the section, in the way it would bend',
  );
  const slender = computed(
    ratio(display, 'slenderness', way === '' ? 'slenderness' : `slenderness ${way}`, 'up'),
    each(reach.value, (l) => slenderness(l, depth)),
    '{reach} ÷ {thick}',
    { reach, thick },
    nds('3.7.1.3'),
  );
  const left = '(1 + r) ÷ 1.6 − √(((1 + r) ÷ 1.6)² − r ÷ 0.8)';
  return computed(
    ratio(display, 'stability', ['what buckling leaves (Cp)', way].filter(Boolean).join(' '), 'down'),
    most === undefined || least === undefined
      ? undefined
      : each(reach.value, (l) => columnStability(most.low, least.low, slenderness(l, depth), factor)),
    `${factor === 1 ? left : `${factor} × (${left})`}, r = 0.822 × {modulus} ÷ {slender}² ÷ {along}`,
    { modulus, slender, along },
    nds(factor === 1 ? '3.7.1.5' : '3.7.1.5; 15.3.2, nailed plies'),
  );
}
