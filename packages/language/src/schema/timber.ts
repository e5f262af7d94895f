import { type Message, term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import {
  either,
  extent,
  flag,
  nothing,
  quantity,
  reference,
  sequence,
  size,
  word,
} from '../phrase/pattern.js';
import { source } from './phrases.js';
import { sourceLine } from './source.js';

export const timberProperties = {
  size: property('size', size('size'), {
    doc: term('doc.timber--size'),
    example: 'size 4x4',
    required: true,
  }),
  dressed: property('dressed', sequence(extent('width'), word('by'), extent('depth'), source), {
    doc: term('doc.timber--dressed'),
    example: 'dressed 3.5 in by 3.5 in',
    required: true,
  }),
  species: property('species', reference('species', 'species'), {
    doc: term('doc.timber--species'),
    example: 'species DouglasFir',
    required: true,
  }),
  wet: property('wet', nothing, {
    doc: term('doc.timber--wet'),
    example: 'wet',
  }),
  source: sourceLine,
};

export const timber: BlockSchema = {
  keyword: 'timber',
  within: ['file'],
  doc: term('doc.timber'),
  example: 'timber Fir4x4 {\n  size 4x4\n  dressed 3.5 in by 3.5 in\n  species DouglasFir\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'timber',
  element: 'timber',
  bodyOptional: false,
  properties: Object.values(timberProperties),
};

const value = <N extends 'pressure' | 'density'>(
  key: string,
  dimension: N | readonly ('density' | 'unit weight')[],
  doc: Message,
  example: string,
) => property(key, sequence(quantity('value', dimension), source), { doc, example, required: true });

export const speciesProperties = {
  perpendicularToGrain: value(
    'perpendicular to grain',
    'pressure',
    term('doc.species--perpendicular-to-grain'),
    'perpendicular to grain 625 psi',
  ),
  parallelToGrain: value(
    'parallel to grain',
    'pressure',
    term('doc.species--parallel-to-grain'),
    'parallel to grain 1,000 psi',
  ),
  modulusAcross: value(
    'modulus perpendicular',
    'pressure',
    term('doc.species--modulus-perpendicular'),
    'modulus perpendicular 65 ksi',
  ),
  modulusAlong: value(
    'modulus parallel',
    'pressure',
    term('doc.species--modulus-parallel'),
    'modulus parallel 1,600 ksi',
  ),
  modulusMin: value('modulus least', 'pressure', term('doc.species--modulus-least'), 'modulus least 580 ksi'),
  density: value('density', ['density', 'unit weight'], term('doc.species--density'), 'density 32 pcf'),
  source: sourceLine,
};

export const species: BlockSchema = {
  keyword: 'species',
  within: ['file'],
  doc: term('doc.species'),
  example: 'species DouglasFir {\n  perpendicular to grain 625 psi source published "…" "…"\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'species',
  element: 'species',
  bodyOptional: false,
  properties: Object.values(speciesProperties),
};

/** No tire or timber grips more than this: 60 is meant as 0.6. */
const friction = quantity('friction', 'ratio', { range: true, atLeast: 0, atMost: 1.5 });

export const surfaceProperties = {
  bearing: property(
    'bearing',
    sequence(either(flag('unknown', 'unknown'), quantity('bearing', 'pressure')), source),
    {
      doc: term('doc.surface--bearing'),
      example: 'bearing 3,000 psf',
      required: true,
    },
  ),
  tireFriction: property('tire friction', sequence(friction, source), {
    doc: term('doc.surface--tire-friction'),
    example: 'tire friction 0.6 to 0.8',
    required: true,
  }),
  timberFriction: property('timber friction', sequence(friction, source), {
    doc: term('doc.surface--timber-friction'),
    example: 'timber friction 0.4 to 0.6',
    required: true,
  }),
  bodyFriction: property('body friction', sequence(either(flag('unknown', 'unknown'), friction), source), {
    doc: term('doc.surface--body-friction'),
    example: 'body friction 0.2 to 0.4',
  }),
  source: sourceLine,
};

export const surface: BlockSchema = {
  keyword: 'surface',
  within: ['file'],
  doc: term('doc.surface'),
  example:
    'surface gravel {\n  bearing 3,000 psf\n  tire friction 0.5 to 0.7\n  timber friction 0.4 to 0.6\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'surface',
  element: 'surface',
  bodyOptional: false,
  properties: Object.values(surfaceProperties),
};

export const cargoTypeProperties = {
  density: property(
    'density',
    sequence(quantity('density', ['density', 'unit weight'], { range: true }), source),
    {
      doc: term('doc.cargo-type--density'),
      example: 'density 95 to 110 pcf',
      required: true,
    },
  ),
  shifts: property('shifts', nothing, {
    doc: term('doc.cargo-type--shifts'),
    example: 'shifts',
  }),
  source: sourceLine,
};

export const cargoType: BlockSchema = {
  keyword: 'cargo type',
  within: ['file'],
  doc: term('doc.cargo-type'),
  example: 'cargo type Gravel {\n  density 95 to 110 pcf\n  shifts\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'cargo type',
  element: 'cargo type',
  bodyOptional: false,
  properties: Object.values(cargoTypeProperties),
};

export const materialBlocks: readonly BlockSchema[] = [timber, species, surface, cargoType];
