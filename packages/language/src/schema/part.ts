import { inch } from '@cribwright/units';
import { type BlockSchema, property } from '../bound/block-schema.js';
import {
  anyOrder,
  choice,
  either,
  extent,
  flag,
  list,
  nothing,
  optional,
  quantity,
  sequence,
  text,
  word,
} from '../phrase/pattern.js';
import { sides, source } from './phrases.js';
import { sourceLine } from './source.js';

const shared = {
  offset: property(
    'offset',
    sequence(
      either(
        list('sides', sequence(choice('side', ...sides), quantity('offset', 'length'))),
        flag('centerd', 'center'),
        quantity('offset', 'length'),
      ),
      source,
    ),
    {
      doc: 'How far from the centerline. One length means as much to each side.',
      example: 'offset 4 ft',
    },
  ),
  height: property('height', sequence(quantity('height', 'length', { range: true, atLeast: 0 }), source), {
    doc: 'Its underside above the ground, as the vehicle stands upright.',
    example: 'height 42 to 46 in',
    required: true,
  }),
  width: property('width', sequence(extent('width'), source), {
    doc: 'How wide the piece itself is.',
    example: 'width 3 in',
  }),
  depth: property('depth', sequence(extent('depth'), source), {
    doc: 'How deep it is, from its underside up.',
    example: 'depth 6 in',
  }),
  bear: property('may bear', optional(text('remark', 'what to mind')), {
    doc: 'A support may bear on it. A remark says what to mind.',
    example: 'may bear',
  }),
  notBear: property('may not bear', optional(text('remark', 'why not')), {
    doc: 'No support may bear on it.',
    example: 'may not bear "thin skin"',
  }),
  moves: property('moves', nothing, {
    doc: 'It can move on its own: a door, a hood, a cab on springs. No strut head goes here.',
    example: 'moves',
  }),
  rating: property('rating', sequence(quantity('rating', ['force', 'mass']), source), {
    doc: 'What it can carry, where it has a rating.',
    example: 'rating 25,000 lb',
  }),
  carries: property(
    'carries',
    sequence(
      optional(sequence(quantity('empty', ['force', 'mass'], { range: true }), optional(word('empty')))),
      anyOrder(sequence(word('stiffness'), quantity('stiffness', 'stiffness')), flag('raised', 'raised')),
      source,
    ),
    {
      doc: 'It holds the vehicle up before the crew comes: landing gear, a kingpin on a fifth wheel. The load is of all its points together, empty.',
      example: 'carries 5,000 lb empty stiffness 40,000 lb per in',
    },
  ),
  source: sourceLine,
};

const runs = property('runs', sequence(quantity('extent', 'length', { range: true }), source), {
  doc: 'From where to where along the vehicle, back from its front.',
  example: 'runs 0 ft to 53 ft',
  required: true,
});
const spacing = property('spacing', sequence(quantity('spacing', 'length', { atLeast: inch }), source), {
  doc: 'From the middle of one to the middle of the next.',
  example: 'spacing 12 in',
  required: true,
});
const at = property('at', sequence(quantity('back', 'length'), source), {
  doc: 'How far back from the front of the vehicle.',
  example: 'at 3 ft',
  required: true,
});

const block = (
  keyword: string,
  doc: string,
  example: string,
  own: BlockSchema['properties'],
): BlockSchema => ({
  keyword,
  within: ['vehicle type', 'vehicle'],
  doc,
  example,
  head: { name: 'required', title: 'optional' },
  declares: 'part',
  bodyOptional: false,
  properties: [...own, ...Object.values(shared)],
});

export const partProperties = { ...shared, runs, spacing, at };

export const rails = block(
  'rails',
  'Members that run lengthwise: frame rails, bottom rails.',
  'rails rail "bottom rail" {\n  runs 0 ft to 53 ft\n  offset 4 ft\n  height 42 to 46 in\n  width 3 in\n  may bear\n}',
  [runs],
);
export const joists = block(
  'joists',
  'The crossmembers of a floor. They run crosswise between the rails.',
  'joists joists {\n  runs 1 ft to 52 ft\n  spacing 12 in\n  offset 4 ft\n  height 42 to 46 in\n  width 2 in\n  may bear\n}',
  [runs, spacing],
);
export const area = block(
  'area',
  'A flat stretch: a roof, a floor, a tank shell.',
  'area roof {\n  runs 5 ft to 10 ft\n  offset 2 ft\n  height 4 ft 6 in\n  may not bear "thin skin"\n}',
  [runs],
);
export const points = block(
  'points',
  'Single places: landing gear, cab mounts, kingpin.',
  'points legs "landing gear" {\n  at 9 ft\n  offset 2 ft\n  height 0 in\n  carries 5,000 lb empty stiffness 40,000 lb per in\n}',
  [at],
);

export const partForms = {
  rails: 'rails',
  joists: 'joists',
  area: 'patch',
  points: 'points',
} as const;
export const partBlocks: readonly BlockSchema[] = [rails, joists, area, points];
