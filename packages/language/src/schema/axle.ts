import { type BlockSchema, property } from '../bound/block-schema.js';
import { choice, count, extent, optional, quantity, sequence, word } from '../phrase/pattern.js';
import { source } from './phrases.js';

export const axleProperties = {
  at: property('at', sequence(quantity('back', 'length'), source), {
    doc: 'How far back from the front of the vehicle.',
    example: 'at 41 ft',
    required: true,
  }),
  empty: property('empty', sequence(quantity('load', ['force', 'mass'], { range: true }), source), {
    doc: 'Load on this axle when the vehicle is empty.',
    example: 'empty 4,400 to 5,000 lb',
    required: true,
  }),
  track: property('track', sequence(extent('track'), source), {
    doc: 'From the middle of the left tires to the middle of the right ones.',
    example: 'track 6 ft 6 in',
    required: true,
  }),
  tires: property('tires', sequence(count('each', { atLeast: 1, atMost: 2 }), word('each side'), source), {
    doc: 'Single or dual tires.',
    example: 'tires 2 each side',
  }),
  suspension: property('suspension', sequence(choice('suspension', 'air', 'spring', 'rigid'), source), {
    doc: 'What carries the axle. Air may leak away; where nobody says what it is, it counts as air.',
    example: 'suspension air',
  }),
  stiffness: property(
    'stiffness',
    sequence(quantity('stiffness', 'stiffness'), optional(word('each side')), source),
    {
      doc: 'Of one end of the axle, tire and suspension together: how much weight moves it how far.',
      example: 'stiffness 3,000 lb per in each side',
    },
  ),
};

export const axle: BlockSchema = {
  keyword: 'axle',
  within: ['vehicle type', 'vehicle'],
  doc: 'One axle: where it is, what it carries empty, and on what.',
  example:
    'axle 1 {\n  at 41 ft\n  empty 4,400 to 5,000 lb\n  track 6 ft 6 in\n  tires 2 each side\n  suspension air\n}',
  head: { name: 'required' },
  declares: 'axle',
  bodyOptional: false,
  properties: Object.values(axleProperties),
};
