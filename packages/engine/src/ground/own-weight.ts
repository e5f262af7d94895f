import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import { type Crib, computed, exactly, given, measured, timberCount } from '@cribwright/model';
import { count, force, length, times, unitWeight } from '@cribwright/model/internal';
import { STANDARD_GRAVITY } from '@cribwright/units';
import { sizeSource } from '../timber/size-source.js';

/** What the timber of a crib weighs, N: volume of its pieces × weight per volume. Wedges and shims are left out. */
export function ownWeight(crib: Crib): Figure {
  const { timber } = crib;
  const pieces = measured(
    count('pieces', term('figure.pieces-of-timber'), 'up'),
    exactly(timberCount(crib)),
    term('figure.all-timbers-of-all-courses'),
  );
  const size = (key: 'width' | 'depth') =>
    given(
      length(key, term(key === 'width' ? 'figure.dressed-width' : 'figure.dressed-depth'), 'up'),
      exactly(timber[key]),
      sizeSource(timber),
    );
  const long = given(length('timberLength', term('figure.timber-length'), 'up'), exactly(timber.length), {
    kind: 'stated',
  });
  const each = given(
    unitWeight('unitWeight', term('figure.weight-per-volume'), 'up', { ref: timber.ref }),
    exactly(timber.density * STANDARD_GRAVITY),
    timber.densitySource ?? timber.source,
  );
  const [width, depth] = [size('width'), size('depth')];
  return computed(
    force('ownWeight', term('figure.weight-of-its-timber'), 'up'),
    [width, depth, long, each].reduce((product, f) => times(product, f.value), pieces.value),
    '{pieces} × {width} × {depth} × {long} × {each}',
    { pieces, width, depth, long, each },
  );
}
