import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import {
  anyOrder,
  choice,
  either,
  extent,
  flag,
  list,
  name,
  optional,
  part,
  quantity,
  reference,
  sequence,
  symbol,
  text,
  word,
} from '../phrase/pattern.js';
import { axle } from './axle.js';
import { cab } from './cab.js';
import { partBlocks } from './part.js';
import { across, andThen, center, place, sides, source } from './phrases.js';
import { sourceLine } from './source.js';

/** What is said of a vehicle wherever it is described. */
export const vehicleTypeProperties = {
  length: property('length', sequence(extent('length'), source), {
    doc: term('doc.vehicle-type--length'),
    example: 'length 53 ft',
  }),
  width: property('width', sequence(extent('width'), source), {
    doc: term('doc.vehicle-type--width'),
    example: 'width 8 ft 6 in',
  }),
  height: property('height', sequence(extent('height'), source), {
    doc: term('doc.vehicle-type--height'),
    example: 'height 13 ft 6 in',
  }),
  weight: property('weight', sequence(quantity('weight', ['force', 'mass'], { range: true }), source), {
    doc: term('doc.vehicle-type--weight'),
    example: 'weight 14,000 to 15,500 lb',
  }),
  center: property('center', sequence(center, source), {
    doc: term('doc.vehicle-type--center'),
    example: 'center 28 ft back, 4 ft high',
  }),
  without: property('no', list('parts', name('part', 'part')), {
    doc: term('doc.vehicle-type--without'),
    example: 'no joists',
    repeatable: true,
  }),
  source: sourceLine,
};

export const cargoLine = property(
  'cargo',
  sequence(
    optional(text('label', 'what it is')),
    either(
      sequence(
        quantity('weight', ['force', 'mass'], { range: true }),
        optional(sequence(word('of'), reference('type', 'cargo type'))),
      ),
      sequence(quantity('volume', 'volume', { range: true }), word('of'), reference('type', 'cargo type')),
    ),
    word('from'),
    quantity('from', 'length'),
    word('to'),
    quantity('to', 'length'),
    anyOrder(
      sequence(word('center'), quantity('center', 'length', { range: true })),
      sequence(word('height'), quantity('height', 'length', { range: true, atLeast: 0 })),
      sequence(word('offset'), choice('offsetSide', ...sides), quantity('offset', 'length', { range: true })),
      flag('shifts', 'shifts'),
    ),
  ),
  {
    doc: term('doc.vehicle-type--cargo'),
    example: 'cargo 36,000 to 42,000 lb from 4 ft to 48 ft',
    repeatable: true,
  },
);

export const vehicleType: BlockSchema = {
  keyword: 'vehicle type',
  within: ['file'],
  doc: term('doc.vehicle-type'),
  example: 'vehicle type FlatTrailer : SemiTrailer {\n  length 48 ft\n}',
  head: {
    name: 'required',
    title: 'optional',
    type: { kinds: ['vehicle type'], required: false, extends: true },
  },
  declares: 'vehicle type',
  element: 'vehicle type',
  bodyOptional: false,
  properties: [...Object.values(vehicleTypeProperties), cargoLine],
};

export const vehicleProperties = {
  at: property('at', place, {
    doc: term('doc.vehicle--at'),
    example: 'at 24 ft, driver side 2 ft',
  }),
  heading: property(
    'heading',
    either(
      flag('same', 'same way'),
      flag('opposite', 'opposite'),
      flag('acrossDriver', 'across to driver side'),
      flag('acrossPassenger', 'across to passenger side'),
      quantity('angle', 'angle'),
    ),
    {
      doc: term('doc.vehicle--heading'),
      example: 'heading opposite',
    },
  ),
  position: property(
    'position',
    either(
      flag('upright', 'upright'),
      sequence(word('pitched'), quantity('angle', 'angle'), choice('nose', 'nose down', 'nose up')),
      sequence(word('on its'), choice('side', ...sides)),
      flag('roof', 'on its roof'),
    ),
    { doc: term('doc.vehicle--position'), example: 'position on its driver side' },
  ),
  rests: property(
    'rests on',
    either(
      flag('ground', 'ground'),
      sequence(
        word('dock'),
        quantity('dockHeight', 'length', { atLeast: 0 }),
        word('from'),
        quantity('from', 'length'),
        word('to'),
        quantity('to', 'length'),
      ),
    ),
    {
      doc: term('doc.vehicle--rests-on'),
      example: 'rests on dock 48 in from 0 ft to 20 ft',
    },
  ),
  bears: property(
    'bears',
    sequence(
      reference('upper', 'vehicle'),
      word('at'),
      part('part', 'upper'),
      optional(
        either(
          sequence(word('near'), quantity('back', 'length'), optional(sequence(symbol(','), across))),
          sequence(word('from'), quantity('from', 'length'), word('to'), quantity('to', 'length')),
        ),
      ),
    ),
    {
      doc: term('doc.vehicle--bears'),
      example: 'bears trailer at rail',
      repeatable: true,
    },
  ),
  coupled: property('coupled to', reference('to', 'vehicle'), {
    doc: term('doc.vehicle--coupled-to'),
    example: 'coupled to tractor',
  }),
  brakes: property('brakes', choice('brakes', 'set', 'released', 'unknown'), {
    doc: term('doc.vehicle--brakes'),
    example: 'brakes set',
  }),
  tire: property('no tire at', sequence(reference('axle', 'axle'), andThen(choice('side', ...sides))), {
    doc: term('doc.vehicle--no-tire-at'),
    example: 'no tire at axle 2, driver side',
    repeatable: true,
  }),
  cargo: cargoLine,
};

export const vehicle: BlockSchema = {
  keyword: 'vehicle',
  within: ['plan'],
  doc: term('doc.vehicle'),
  example: 'vehicle trailer : VanTrailer53 {\n  cargo 36,000 to 42,000 lb from 4 ft to 48 ft\n}',
  head: { name: 'required', type: { kinds: ['vehicle type'], required: false, extends: false } },
  declares: 'vehicle',
  element: 'vehicle',
  bodyOptional: true,
  properties: [...Object.values(vehicleProperties), ...Object.values(vehicleTypeProperties)],
};

export const vehicleBlocks: readonly BlockSchema[] = [vehicleType, vehicle, axle, ...partBlocks, cab];
