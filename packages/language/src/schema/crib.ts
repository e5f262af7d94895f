import { inch } from '@cribwright/units';
import { type BlockSchema, property } from '../bound/block-schema.js';
import {
  choice,
  count,
  extent,
  list,
  nothing,
  optional,
  quantity,
  reference,
  sequence,
  word,
} from '../phrase/pattern.js';
import { andThen, capture, footing, supportPlace } from './phrases.js';

export const cribProperties = {
  timber: property(
    'timber',
    sequence(
      reference('timber', 'timber'),
      quantity('length', 'length', { atLeast: inch, atMost: 15 }),
      optional(word('long')),
    ),
    {
      doc: 'The timber it is built of, and how long each piece is.',
      example: 'timber Fir4x4 24 in long',
      required: true,
    },
  ),
  layout: property(
    'layout',
    sequence(
      count('lengthwise', { atLeast: 2, atMost: 12 }),
      word('by'),
      count('crosswise', { atLeast: 2, atMost: 12 }),
    ),
    {
      doc: 'Timbers in a course that runs lengthwise, by timbers in a course that runs crosswise.',
      example: 'layout 2 by 2',
      required: true,
    },
  ),
  base: property('base', choice('base', 'open', 'solid'), {
    doc: 'Whether the bottom course is filled solid. It counts as a course.',
    example: 'base solid',
  }),
  courses: property('courses', count('courses', { atLeast: 1, atMost: 60 }), {
    doc: 'All courses, the base course too.',
    example: 'courses 11',
    required: true,
  }),
  at: property('at', supportPlace, {
    doc: 'The center of the crib: back from the front of the main vehicle, and to which side.',
    example: 'at 21 ft, driver side 3 ft 4 in',
    required: true,
  }),
  captures: property('captures', list('parts', capture), {
    doc: 'What its top meets. With two parts the first takes the outer pair of contacts, the second the inner pair.',
    example: 'captures rail, joists',
    required: true,
  }),
  top: property('top', choice('top', 'lengthwise', 'crosswise'), {
    doc: 'Which way the timbers of the top course run. Lengthwise where nothing is said.',
    example: 'top crosswise',
  }),
  overhang: property('overhang', quantity('overhang', 'length', { atLeast: 0 }), {
    doc: 'How far each timber runs past the contact. Without it, the least that the policy allows.',
    example: 'overhang 4 in',
  }),
  wedges: property(
    'wedges',
    sequence(
      count('pairs', { atLeast: 1, atMost: 144 }),
      word('pairs', 'pair'),
      andThen(quantity('travel', 'length', { range: true, atLeast: 0 })),
      andThen(sequence(word('preload'), quantity('preload', ['force', 'mass']))),
    ),
    {
      doc: 'Pairs of wedges that close the last gap, and how much they close together. Snug unless a preload is said.',
      example: 'wedges 4 pairs',
    },
  ),
  shims: property('shims', quantity('thickness', 'length', { atLeast: 0 }), {
    doc: 'Shims and plates under the load, all together.',
    example: 'shims 3/4 in',
  }),
  standsOn: property('stands on', footing, {
    doc: 'What it stands on, where that is not the ground.',
    example: 'stands on tractor frame',
  }),
  slidIn: property('slid in', nothing, {
    doc: 'Built outside and slid in: the far contacts are out of sight and are looked at again.',
    example: 'slid in',
  }),
};

/** A stack of crossed timbers. */
export const crib: BlockSchema = {
  keyword: 'crib',
  within: ['plan', 'pattern'],
  doc: 'A box crib: crossed courses of timber from the ground, or from a frame, up to a part that may bear.',
  example:
    'crib A {\n  timber   Fir4x4 24 in long\n  layout   2 by 2\n  base     solid\n  courses  11\n  at       21 ft, driver side 3 ft 4 in\n  captures rail, joists\n}',
  head: { name: 'required' },
  declares: 'crib',
  element: 'crib',
  bodyOptional: false,
  properties: Object.values(cribProperties),
};

export const stepChockProperties = {
  at: cribProperties.at,
  captures: cribProperties.captures,
  standsOn: cribProperties.standsOn,
};

export const stepChock: BlockSchema = {
  keyword: 'step chock',
  within: ['plan', 'pattern'],
  doc: 'A stepped block slid under a car: one bearing edge, its height picked by the step.',
  example: 'step chock C1 : StepChock {\n  at 26 ft, driver side 5 ft\n  captures car rocker\n}',
  head: { name: 'required', type: { kinds: ['step chock type'], required: true, extends: false } },
  declares: 'step chock',
  element: 'step chock',
  bodyOptional: false,
  properties: Object.values(stepChockProperties),
};

export const padProperties = {
  size: property('size', sequence(extent('length'), word('by'), extent('width')), {
    doc: 'Lengthwise by crosswise.',
    example: 'size 3 ft by 3 ft',
    required: true,
  }),
  thickness: property('thickness', extent('thickness'), {
    doc: 'How thick it is.',
    example: 'thickness 3.5 in',
    required: true,
  }),
  material: property('material', choice('material', 'timber', 'plywood', 'steel'), {
    doc: 'What it is made of. It decides how far the pad spreads a load before it bends. Timber: side by side, running lengthwise. Without it the pad counts as spreading nothing.',
    example: 'material timber',
  }),
  under: property('under', reference('under', 'crib', 'strut', 'step chock'), {
    doc: 'The support that stands on it.',
    example: 'under A',
    required: true,
  }),
};

export const pad: BlockSchema = {
  keyword: 'pad',
  within: ['plan', 'pattern'],
  doc: 'A plate or mat that spreads the load of a crib or strut base over the ground.',
  example: 'pad P1 {\n  size 3 ft by 3 ft\n  thickness 3.5 in\n  material timber\n  under A\n}',
  head: { name: 'required' },
  declares: 'pad',
  element: 'pad',
  bodyOptional: false,
  properties: Object.values(padProperties),
};

export const cribBlocks: readonly BlockSchema[] = [crib, stepChock, pad];
