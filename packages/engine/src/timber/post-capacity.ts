import type { Figure, SourceNote } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { StrutGear } from '@cribwright/model';
/**
 * A timber post pressed along its length: straight, pinned at both ends, loaded through its middle. NDS 3.7.1,
 * and 15.3 for one built up of plies. Load duration counts as normal (CD = 1): a crew may wait beside it for hours.
 */
import { computed, exactly, given, measured } from '@cribwright/model';
import { area, each, force, length, lesser, ratio, stress, times } from '@cribwright/model/internal';
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
export function postFigures(post: Post, reach: Figure): PostFigures {
  const { timber, plies, ref } = post;
  const [acrossPlies, alongThem] = bendings(post);
  const least = thinner(acrossPlies, alongThem);
  const depth = given(
    length(
      'leastDepth',
      plies > 1 ? term('figure.least-depth-of-the-plies-together') : term('figure.least-depth'),
      'down',
      {
        ref,
      },
    ),
    exactly(least.depth),
    timber.source,
  );
  const slender = computed(
    ratio('slenderness', term('figure.slenderness'), 'up', { ref }),
    each(reach.value, (l) => slenderness(l, least.depth)),
    '{reach} ÷ {depth}',
    { reach, depth },
    nds('3.7.1.3'),
  );
  const wet = timber.wet;
  const strength = timber.parallelToGrain * (wet ? WET_ALONG : 1);
  const leastModulus = timber.modulusMin * (wet ? WET_MODULUS : 1);
  const along = given(
    stress(
      'parallelToGrain',
      wet ? term('figure.stress-along-the-grain-wet-0-8') : term('figure.stress-along-the-grain'),
      'down',
      {
        ref: timber.ref,
      },
    ),
    exactly(strength),
    timber.source,
  );
  const modulus = given(
    stress('modulusMin', wet ? term('figure.least-modulus-wet-0-9') : term('figure.least-modulus'), 'down', {
      ref: timber.ref,
    }),
    exactly(leastModulus),
    timber.source,
  );
  const pressed: Pressed = { reach, along, modulus, strength, leastModulus };
  const across = stabilityFigure(pressed, acrossPlies, 'across');
  const alongPlies = stabilityFigure(pressed, alongThem, 'along');
  const stability =
    plies > 1
      ? computed(
          ratio('stability', term('figure.what-buckling-leaves-cp'), 'down'),
          lesser(across.value, alongPlies.value),
          'min({across}, {alongPlies})',
          { across, alongPlies },
          nds('3.7.1.5; 15.3.2, nailed plies'),
        )
      : stabilityFigure(pressed, least, undefined);
  const section = given(
    area('section', term('figure.section'), 'down', { ref: timber.ref }),
    exactly(timber.width * timber.depth * plies),
    timber.source,
  );
  return {
    slenderness: slender,
    capacity: computed(
      force('capacity', term('figure.capacity-along-the-post'), 'down', {
        ref,
        governs:
          reach.value !== undefined && reach.value.low !== reach.value.high
            ? term('figure.the-longest-it-may-be')
            : undefined,
        assumes: [term('figure.the-post-is-straight-its-ends-are')],
      }),
      times(times(section.value, along.value), stability.value),
      '{section} × {along} × {stability}',
      { section, along, stability },
    ),
  };
}

const thinner = (a: Bending, b: Bending): Bending => (b.depth < a.depth ? b : a);

/** A post under load: its length, and its timber's strength and stiffness as printed and as numbers, Pa. */
interface Pressed {
  readonly reach: Figure;
  readonly along: Figure;
  readonly modulus: Figure;
  readonly strength: number;
  readonly leastModulus: number;
}

/** What buckling leaves in one way of bending. */
function stabilityFigure(
  { reach, along, modulus, strength, leastModulus }: Pressed,
  { depth, factor }: Bending,
  way: 'across' | 'along' | undefined,
): Figure {
  const thick = measured(
    length(
      'depth',
      way === undefined ? term('figure.least-depth') : term(`figure.depth-${way}-its-plies`),
      'down',
    ),
    exactly(depth),
    term('figure.of-the-section-in-the-way-it'),
  );
  const slender = computed(
    ratio(
      'slenderness',
      way === undefined ? term('figure.slenderness') : term(`figure.slenderness-${way}-its-plies`),
      'up',
    ),
    each(reach.value, (l) => slenderness(l, depth)),
    '{reach} ÷ {thick}',
    { reach, thick },
    nds('3.7.1.3'),
  );
  const left = '(1 + r) ÷ 1.6 − sqrt(((1 + r) ÷ 1.6)² − r ÷ 0.8)';
  return computed(
    ratio(
      'stability',
      way === undefined
        ? term('figure.what-buckling-leaves-cp')
        : term(`figure.what-buckling-leaves-${way}-its-plies`),
      'down',
    ),
    each(reach.value, (l) => columnStability(strength, leastModulus, slenderness(l, depth), factor)),
    `${factor === 1 ? left : `${factor} × (${left})`} where r = 0.822 × {modulus} ÷ {slender}² ÷ {along}`,
    { modulus, slender, along },
    nds(factor === 1 ? '3.7.1.5' : '3.7.1.5; 15.3.2, nailed plies'),
  );
}
