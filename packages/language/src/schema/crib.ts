import { term } from '@cribwright/messages';
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
      doc: term('doc.crib--timber'),
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
      doc: term('doc.crib--layout'),
      example: 'layout 2 by 2',
      required: true,
    },
  ),
  base: property('base', choice('base', 'open', 'solid'), {
    doc: term('doc.crib--base'),
    example: 'base solid',
  }),
  courses: property('courses', count('courses', { atLeast: 1, atMost: 60 }), {
    doc: term('doc.crib--courses'),
    example: 'courses 11',
    required: true,
  }),
  at: property('at', supportPlace, {
    doc: term('doc.crib--at'),
    example: 'at 21 ft, driver side 3 ft 4 in',
    required: true,
  }),
  captures: property('captures', list('parts', capture), {
    doc: term('doc.crib--captures'),
    example: 'captures rail, joists',
    required: true,
  }),
  top: property('top', choice('top', 'lengthwise', 'crosswise'), {
    doc: term('doc.crib--top'),
    example: 'top crosswise',
  }),
  overhang: property('overhang', quantity('overhang', 'length', { atLeast: 0 }), {
    doc: term('doc.crib--overhang'),
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
      doc: term('doc.crib--wedges'),
      example: 'wedges 4 pairs',
    },
  ),
  shims: property('shims', quantity('thickness', 'length', { atLeast: 0 }), {
    doc: term('doc.crib--shims'),
    example: 'shims 3/4 in',
  }),
  standsOn: property('stands on', footing, {
    doc: term('doc.crib--stands-on'),
    example: 'stands on tractor frame',
  }),
  slidIn: property('slid in', nothing, {
    doc: term('doc.crib--slid-in'),
    example: 'slid in',
  }),
};

/** A stack of crossed timbers. */
export const crib: BlockSchema = {
  keyword: 'crib',
  within: ['plan', 'pattern'],
  doc: term('doc.crib'),
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
  doc: term('doc.step-chock'),
  example: 'step chock C1 : StepChock {\n  at 26 ft, driver side 5 ft\n  captures car rocker\n}',
  head: { name: 'required', type: { kinds: ['step chock type'], required: true, extends: false } },
  declares: 'step chock',
  element: 'step chock',
  bodyOptional: false,
  properties: Object.values(stepChockProperties),
};

export const padProperties = {
  size: property('size', sequence(extent('length'), word('by'), extent('width')), {
    doc: term('doc.pad--size'),
    example: 'size 3 ft by 3 ft',
    required: true,
  }),
  thickness: property('thickness', extent('thickness'), {
    doc: term('doc.pad--thickness'),
    example: 'thickness 3.5 in',
    required: true,
  }),
  material: property('material', choice('material', 'timber', 'plywood', 'steel'), {
    doc: term('doc.pad--material'),
    example: 'material timber',
  }),
  under: property('under', reference('under', 'crib', 'strut', 'step chock'), {
    doc: term('doc.pad--under'),
    example: 'under A',
    required: true,
  }),
};

export const pad: BlockSchema = {
  keyword: 'pad',
  within: ['plan', 'pattern'],
  doc: term('doc.pad'),
  example: 'pad P1 {\n  size 3 ft by 3 ft\n  thickness 3.5 in\n  material timber\n  under A\n}',
  head: { name: 'required' },
  declares: 'pad',
  element: 'pad',
  bodyOptional: false,
  properties: Object.values(padProperties),
};

export const cribBlocks: readonly BlockSchema[] = [crib, stepChock, pad];
