import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { choice, count, extent, optional, quantity, sequence, word } from '../phrase/pattern.js';
import { source } from './phrases.js';

export const axleProperties = {
  at: property('at', sequence(quantity('back', 'length'), source), {
    doc: term('doc.axle--at'),
    example: 'at 41 ft',
    required: true,
  }),
  empty: property('empty', sequence(quantity('load', ['force', 'mass'], { range: true }), source), {
    doc: term('doc.axle--empty'),
    example: 'empty 4,400 to 5,000 lb',
    required: true,
  }),
  track: property('track', sequence(extent('track'), source), {
    doc: term('doc.axle--track'),
    example: 'track 6 ft 6 in',
    required: true,
  }),
  tires: property('tires', sequence(count('each', { atLeast: 1, atMost: 2 }), word('each side'), source), {
    doc: term('doc.axle--tires'),
    example: 'tires 2 each side',
  }),
  suspension: property('suspension', sequence(choice('suspension', 'air', 'spring', 'rigid'), source), {
    doc: term('doc.axle--suspension'),
    example: 'suspension air',
  }),
  stiffness: property(
    'stiffness',
    sequence(quantity('stiffness', 'stiffness'), optional(word('each side')), source),
    {
      doc: term('doc.axle--stiffness'),
      example: 'stiffness 3,000 lb per in each side',
    },
  ),
};

export const axle: BlockSchema = {
  keyword: 'axle',
  within: ['vehicle type', 'vehicle'],
  doc: term('doc.axle'),
  example:
    'axle 1 {\n  at 41 ft\n  empty 4,400 to 5,000 lb\n  track 6 ft 6 in\n  tires 2 each side\n  suspension air\n}',
  head: { name: 'required' },
  declares: 'axle',
  bodyOptional: false,
  properties: Object.values(axleProperties),
};
