import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { anyOrder, choice, name, optional, quantity, sequence, symbol, word } from '../phrase/pattern.js';
import { center, source } from './phrases.js';

export const cabProperties = {
  runs: property('runs', sequence(quantity('extent', 'length', { range: true }), source), {
    doc: term('doc.cab--runs'),
    example: 'runs 2 ft to 10 ft',
    required: true,
  }),
  weight: property('weight', sequence(quantity('weight', ['force', 'mass'], { range: true }), source), {
    doc: term('doc.cab--weight'),
    example: 'weight 3,000 to 3,600 lb',
    required: true,
  }),
  center: property('center', sequence(center, source), {
    doc: term('doc.cab--center'),
    example: 'center 6 ft back, 5 ft 6 in high',
    required: true,
  }),
  mount: property(
    'mount',
    sequence(
      name('name', 'mount'),
      word('at'),
      quantity('back', 'length'),
      optional(symbol(',')),
      word('offset'),
      quantity('offset', 'length'),
      optional(symbol(',')),
      choice('spring', 'air', 'spring', 'rigid'),
      anyOrder(sequence(word('stiffness'), quantity('stiffness', 'stiffness'))),
      source,
    ),
    {
      doc: term('doc.cab--mount'),
      example: 'mount rear at 9 ft, offset 1 ft 6 in, air stiffness 300 lb per in',
      required: true,
      repeatable: true,
    },
  ),
};

export const cab: BlockSchema = {
  keyword: 'cab',
  within: ['vehicle type', 'vehicle'],
  doc: term('doc.cab'),
  example:
    'cab {\n  runs 2 ft to 10 ft\n  weight 3,000 to 3,600 lb\n  center 6 ft back, 5 ft 6 in high\n  mount front at 3 ft, offset 1 ft 6 in, rigid\n  mount rear at 9 ft, offset 1 ft 6 in, air\n}',
  head: { name: 'none' },
  declares: undefined,
  bodyOptional: false,
  properties: Object.values(cabProperties),
};
