import { type Message, term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import type { Kind } from '../kind/kind.js';
import {
  count,
  either,
  extent,
  flag,
  list,
  optional,
  quantity,
  reference,
  sequence,
  word,
} from '../phrase/pattern.js';
import { source } from './phrases.js';
import { sourceLine } from './source.js';

const rating = property(
  'rating',
  sequence(either(flag('unknown', 'unknown'), quantity('rating', ['force', 'mass'])), source),
  {
    doc: term('doc.gear--rating'),
    example: 'rating 3,300 lb',
    required: true,
  },
);

export const strutTypeProperties = {
  length: property('length', sequence(extent('extent', { range: true }), source), {
    doc: term('doc.strut-type--length'),
    example: 'length 6 ft to 10 ft',
  }),
  rating: property(
    'rating',
    sequence(
      either(
        flag('unknown', 'unknown'),
        sequence(quantity('load', ['force', 'mass']), word('at'), extent('length')),
      ),
      source,
    ),
    {
      doc: term('doc.strut-type--rating'),
      example: 'rating 10,000 lb at 8 ft',
      repeatable: true,
    },
  ),
  basePlate: property('base plate', sequence(extent('length'), word('by'), extent('width'), source), {
    doc: term('doc.strut-type--base-plate'),
    example: 'base plate 10 in by 10 in',
  }),
  post: property(
    'post',
    sequence(
      reference('timber', 'timber'),
      optional(sequence(count('plies', { atLeast: 1, atMost: 6 }), word('side by side'))),
    ),
    {
      doc: term('doc.strut-type--post'),
      example: 'post Fir6x6',
    },
  ),
  source: sourceLine,
};

const type = (
  keyword: Kind & string,
  doc: Message,
  example: string,
  properties: BlockSchema['properties'],
): BlockSchema => ({
  keyword,
  within: ['file'],
  doc,
  example,
  head: { name: 'required', title: 'optional' },
  declares: keyword,
  element: keyword,
  bodyOptional: false,
  properties,
});

export const strutType = type(
  'strut type',
  term('doc.strut-type'),
  'strut type YardStrut {\n  length 5 ft to 8 ft\n  rating 12,000 lb at 5 ft\n  rating 8,000 lb at 8 ft\n}',
  Object.values(strutTypeProperties),
);

export const tieTypeProperties = { rating, source: sourceLine };

const tieType = (keyword: 'strap type' | 'chain type' | 'wire rope type', doc: Message) =>
  type(keyword, doc, `${keyword} Example {\n  rating 3,300 lb\n}`, Object.values(tieTypeProperties));

export const strapType = tieType('strap type', term('doc.strap-type'));
export const chainType = tieType('chain type', term('doc.chain-type'));
export const wireRopeType = tieType('wire rope type', term('doc.wire-rope-type'));

export const stepChockTypeProperties = {
  heights: property('heights', sequence(list('heights', extent('height')), source), {
    doc: term('doc.step-chock-type--heights'),
    example: 'heights 3 in, 6 in, 9 in',
    required: true,
  }),
  rating,
  source: sourceLine,
};

export const stepChockType = type(
  'step chock type',
  term('doc.step-chock-type'),
  'step chock type YardStep {\n  heights 3 in, 6 in, 9 in\n  rating 8,000 lb\n}',
  Object.values(stepChockTypeProperties),
);

export const gearBlocks: readonly BlockSchema[] = [
  strutType,
  strapType,
  chainType,
  wireRopeType,
  stepChockType,
];
