import { type Message, term } from '@cribwright/messages';
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
      doc: term('doc.part--offset'),
      example: 'offset 4 ft',
    },
  ),
  height: property('height', sequence(quantity('height', 'length', { range: true, atLeast: 0 }), source), {
    doc: term('doc.part--height'),
    example: 'height 42 to 46 in',
    required: true,
  }),
  width: property('width', sequence(extent('width'), source), {
    doc: term('doc.part--width'),
    example: 'width 3 in',
  }),
  depth: property('depth', sequence(extent('depth'), source), {
    doc: term('doc.part--depth'),
    example: 'depth 6 in',
  }),
  bear: property('may bear', optional(text('remark', 'what to mind')), {
    doc: term('doc.part--may-bear'),
    example: 'may bear',
  }),
  notBear: property('may not bear', optional(text('remark', 'why not')), {
    doc: term('doc.part--may-not-bear'),
    example: 'may not bear "thin skin"',
  }),
  moves: property('moves', nothing, {
    doc: term('doc.part--moves'),
    example: 'moves',
  }),
  rating: property('rating', sequence(quantity('rating', ['force', 'mass']), source), {
    doc: term('doc.part--rating'),
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
      doc: term('doc.part--carries'),
      example: 'carries 5,000 lb empty stiffness 40,000 lb per in',
    },
  ),
  source: sourceLine,
};

const runs = property('runs', sequence(quantity('extent', 'length', { range: true }), source), {
  doc: term('doc.part--runs'),
  example: 'runs 0 ft to 53 ft',
  required: true,
});
const spacing = property('spacing', sequence(quantity('spacing', 'length', { atLeast: inch }), source), {
  doc: term('doc.part--spacing'),
  example: 'spacing 12 in',
  required: true,
});
const at = property('at', sequence(quantity('back', 'length'), source), {
  doc: term('doc.part--at'),
  example: 'at 3 ft',
  required: true,
});

const block = (
  keyword: string,
  doc: Message,
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
  term('doc.rails'),
  'rails rail "bottom rail" {\n  runs 0 ft to 53 ft\n  offset 4 ft\n  height 42 to 46 in\n  width 3 in\n  may bear\n}',
  [runs],
);
export const joists = block(
  'joists',
  term('doc.joists'),
  'joists joists {\n  runs 1 ft to 52 ft\n  spacing 12 in\n  offset 4 ft\n  height 42 to 46 in\n  width 2 in\n  may bear\n}',
  [runs, spacing],
);
export const area = block(
  'area',
  term('doc.area'),
  'area roof {\n  runs 5 ft to 10 ft\n  offset 2 ft\n  height 4 ft 6 in\n  may not bear "thin skin"\n}',
  [runs],
);
export const points = block(
  'points',
  term('doc.points'),
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
