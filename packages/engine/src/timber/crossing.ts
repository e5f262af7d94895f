import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Crib, Policy, Timber } from '@cribwright/model';
import { computed, exactly, given, renamed } from '@cribwright/model';
import {
  area,
  each,
  force,
  length,
  lesser,
  limitFigure,
  limitWord,
  ratio,
  stress,
  times,
} from '@cribwright/model/internal';
import { bearingLengthFactor, wetServiceFactor } from './bearing-factors.js';
import { sizeSource } from './size-source.js';

/**
 * Stress allowed perpendicular to grain at a crossing, Pa. The policy says which: the flat rule, the species' own value
 * (NDS: Fc⊥ × wet service × bearing length), or the lesser of the two.
 *
 * @param overhang of the timber past the crossing, m
 */
export function crossingStress(timber: Timber, overhang: number, policy: Policy): Figure {
  const flat = limitFigure(policy, 'crossing stress');
  const basis = limitWord(policy, 'crossing basis') ?? 'lesser';
  if (basis === 'flat rule')
    return renamed(flat, { key: 'stress', label: term('figure.allowable-stress-perpendicular-to-grain') });
  const species = speciesStress(timber, overhang);
  if (basis === 'species') return renamed(species, { key: 'stress' });
  return computed(
    stress('stress', term('figure.allowable-stress-perpendicular-to-grain'), 'down', { ref: timber.ref }),
    lesser(flat.value, species.value),
    'min({flat}, {species})',
    { flat, species },
  );
}

/**
 * NDS 2018, section 3.10.2 and 3.10.4: Fc⊥′ = Fc⊥ × CM × Cb, Pa. Load duration does not apply to it.
 *
 * @param overhang of the timber past the crossing, m
 */
export function speciesStress(timber: Timber, overhang: number): Figure {
  const reference = given(
    stress(
      'perpendicularToGrain',
      message('figure.perpendicular-to-grain', { species: name(timber.species) }),
      'down',
      {
        ref: timber.ref,
      },
    ),
    exactly(timber.perpendicularToGrain),
    timber.source,
  );
  const wet = given(
    ratio('wet', term('figure.wet-service-factor'), 'down'),
    exactly(wetServiceFactor(timber.wet)),
    {
      kind: 'published',
      title: 'NDS Supplement 2018',
      locator: 'Table 4A, wet service factor',
    },
  );
  const bearing = given(
    ratio('bearing', term('figure.bearing-length-factor'), 'down'),
    exactly(bearingLengthFactor(timber.width, overhang)),
    { kind: 'published', title: 'NDS 2018', locator: '3.10.4' },
  );
  return computed(
    stress('speciesStress', message('figure.stress-allowed', { species: name(timber.species) }), 'down', {
      ref: timber.ref,
    }),
    times(times(reference.value, wet.value), bearing.value),
    '{reference} × {wet} × {bearing}',
    { reference, wet, bearing },
  );
}

/** Where two dressed timbers cross: width × width. */
export function crossingArea(timber: Timber): Figure {
  const width = given(
    length('dressedWidth', term('figure.dressed-width'), 'down', { ref: timber.ref }),
    exactly(timber.width),
    sizeSource(timber),
  );
  return computed(
    area('area', term('figure.crossing'), 'down'),
    exactly(timber.width ** 2),
    '{width} × {width}',
    { width },
  );
}

/** What one crossing carries: stress × dressed area, rounded down to the policy's step. */
export function crossingCapacity(
  { timber, overhang }: Pick<Crib, 'timber' | 'overhang'>,
  policy: Policy,
): Figure {
  const allowed = crossingStress(timber, overhang, policy);
  const surface = crossingArea(timber);
  const step = limitFigure(policy, 'crossing rounding');
  const exact = times(allowed.value, surface.value);
  const size = step.value?.low ?? 0;
  // A hair of slack: a product that is a whole multiple on paper must not lose a step to arithmetic.
  const value = size > 0 ? each(exact, (x) => Math.floor(x / size + 1e-9) * size) : exact;
  return computed(
    force('crossingCapacity', term('figure.capacity-of-a-contact'), 'down'),
    value,
    size > 0 ? 'floorTo({allowed} × {surface}, {step})' : '{allowed} × {surface}',
    size > 0 ? { allowed, surface, step } : { allowed, surface },
  );
}
