import type { Pattern } from '../bound/shape.js';
import {
  choice,
  either,
  flag,
  group,
  optional,
  part,
  quantity,
  reference,
  sequence,
  symbol,
  text,
  word,
} from '../phrase/pattern.js';

/** Phrases that several kinds of line share. */

export const sides = ['driver side', 'passenger side'] as const;

/** `source published "title" "section"`, `source common practice`, `source from memory`, … at the end of a line. */
export const sourcePhrase = either(
  sequence(
    flag('published', 'published'),
    text('sourceTitle', 'title'),
    optional(text('locator', 'table or section')),
  ),
  flag('commonPractice', 'common practice'),
  sequence(flag('fromMemory', 'from memory'), optional(text('memoryOf', 'what is remembered'))),
  flag('invented', 'invented'),
  flag('stated', 'stated'),
  flag('unknownSource', 'unknown'),
);
export const source = optional(sequence(word('source'), sourcePhrase));

/** What may follow, after a comma or without one. */
export const andThen = <T>(item: Pattern<T>) => optional(sequence(optional(symbol(',')), item));

/** `24 ft, driver side 2 ft`; `26 ft, passenger side`; `26 ft, center` */
export const across = either(
  sequence(choice('side', ...sides), optional(quantity('offset', 'length'))),
  flag('centerd', 'center'),
);
export const place = sequence(optional(flag('near', 'near')), quantity('back', 'length'), andThen(across));

/**
 * How far along, as a crew measures it: back from the front of the main vehicle where nothing else is said, or from its
 * rear, or ahead of and behind an axle, a kingpin or another support.
 */
export const along = sequence(
  quantity('back', 'length'),
  optional(
    either(
      choice('fromEnd', 'from the front', 'from the rear'),
      sequence(
        choice('way', 'ahead of', 'behind'),
        group(
          'datum',
          either(
            sequence(optional(reference('vehicle', 'vehicle')), reference('axle', 'axle')),
            sequence(optional(reference('vehicle', 'vehicle')), part('part', 'vehicle')),
            reference('beside', 'crib', 'step chock', 'strut', 'anchor'),
          ),
        ),
      ),
    ),
  ),
);

/** `6 ft ahead of axle 4, driver side 2 ft` */
export const placeAlong = sequence(optional(flag('near', 'near')), along, andThen(across));

/** A place that may also be said by a part: `near joist 14, driver side 2 ft`, `under trailer rail near 20 ft` */
export const supportPlace = either(
  sequence(word('near'), part('member'), quantity('memberNumber', 'count', { atLeast: 1 }), andThen(across)),
  sequence(
    word('under'),
    optional(reference('underVehicle', 'vehicle')),
    part('underPart', 'underVehicle'),
    optional(word('near', 'at')),
    quantity('back', 'length'),
    andThen(choice('side', ...sides)),
  ),
  placeAlong,
);

/** Center of weight: `18 ft to 20 ft back, 4 ft high` */
export const center = either(
  sequence(
    quantity('back', 'length', { range: true }),
    word('back'),
    andThen(across),
    andThen(sequence(quantity('high', 'length', { range: true }), word('high'))),
  ),
  sequence(quantity('high', 'length', { range: true }), word('high')),
);

/** Where a strap or chain is anchored. */
export const anchor = either(
  sequence(reference('strut', 'strut'), choice('end', 'base', 'head')),
  sequence(reference('vehicle', 'vehicle'), part('part', 'vehicle'), optional(placeAlong)),
  reference('anchor', 'anchor'),
);

/** What a support stands on. */
export const footing = either(
  flag('ground', 'ground'),
  sequence(word('pad'), reference('pad', 'pad')),
  sequence(reference('vehicle', 'vehicle'), part('part', 'vehicle')),
);

/** `rail outer pair`, `car roof`, `joists` */
export const capture = sequence(
  optional(reference('vehicle', 'vehicle')),
  part('part', 'vehicle'),
  optional(choice('contacts', 'all', 'outer pair', 'inner pair', 'front pair', 'rear pair')),
);
