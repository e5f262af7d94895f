import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import type { Crib, PlacedCrib } from '@cribwright/model';
import { computed, exactly, given } from '@cribwright/model';
import { length, sourceOfPart } from '@cribwright/model/internal';
import { undersideOf } from './underside-of.js';

export const baseFigure = ({ crib, base }: PlacedCrib): Figure =>
  given(
    length('base', term('figure.what-it-stands-on'), 'nearest', {
      ref: { element: crib.id, property: 'stands on' },
    }),
    base,
    base === undefined ? { kind: 'unknown' } : { kind: 'stated' },
  );

/** From what the crib stands on, its courses and shims up to the captured part. */
export function gapFigure(placed: PlacedCrib, height: Figure, base: Figure): Figure {
  const { crib, captures } = placed;
  const part = given(
    length('partHeight', undersideOf(captures?.part.name), 'nearest', {
      ref: captures?.part.ref,
    }),
    placed.captured,
    captures === undefined ? { kind: 'unknown' } : sourceOfPart(captures, 'height'),
  );
  const shims = given(
    length('shims', term('figure.shims'), 'down', {
      ref: { element: crib.id, property: 'shims' },
    }),
    exactly(crib.shims),
    { kind: 'stated' },
  );
  // Terms that are nothing only clutter the sum.
  const terms = Object.entries({ base, height, shims }).filter(([, f]) => f.value?.high !== 0);
  return computed(
    length('gap', term('figure.gap-to-close'), 'up', { ref: { element: crib.id, property: 'courses' } }),
    placed.gap,
    ['{part}', ...terms.map(([name]) => `{${name}}`)].join(' − '),
    { part, ...Object.fromEntries(terms) },
  );
}

/** What the stated wedges close; nothing without any. */
export function closesFigure(crib: Crib): Figure {
  const head = length('closes', term('figure.gap-that-the-wedges-close'), 'down', {
    ref: { element: crib.id, property: 'wedges' },
  });
  if (crib.wedges === undefined || crib.wedges.pairs <= 0) return given(head, exactly(0), { kind: 'stated' });
  return given(head, crib.wedges.travel, { kind: 'stated' });
}
