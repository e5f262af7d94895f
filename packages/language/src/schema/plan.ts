import { type Message, term } from '@cribwright/messages';
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
  symbol,
  text,
  word,
} from '../phrase/pattern.js';
import { accept } from './accept.js';
import { expectation } from './expect.js';
import { along } from './phrases.js';

export const planProperties = {
  policy: property('policy', reference('policy', 'policy'), {
    doc: term('doc.plan--policy'),
    example: 'policy CountyPolicy',
  }),
  units: property('units', choice('system', 'us', 'si'), {
    doc: term('doc.plan--units'),
    example: 'units us',
  }),
  responding: property('responding', list('caches', reference('cache', 'cache')), {
    doc: term('doc.plan--responding'),
    example: 'responding Rescue12, Engine4',
    repeatable: true,
  }),
  crew: property(
    'crew',
    sequence(
      count('people', { atLeast: 1 }),
      optional(word('people')),
      optional(sequence(word('of'), text('name', 'crew'))),
    ),
    {
      doc: term('doc.plan--crew'),
      example: 'crew 6 people',
      repeatable: true,
    },
  ),
  lift: property('lift intended', nothing, {
    doc: term('doc.plan--lift-intended'),
    example: 'lift intended',
  }),
  expect: expectation,
  accept,
};

/** One stabilization plan. */
export const plan: BlockSchema = {
  keyword: 'plan',
  within: ['file', 'site', 'lesson'],
  doc: term('doc.plan'),
  example: 'plan "Car under a trailer" {\n  ground { surface asphalt; grade 1.5 % toward rear }\n}',
  head: { name: 'optional', title: 'required' },
  declares: 'plan',
  element: 'plan',
  bodyOptional: false,
  ownScope: true,
  properties: Object.values(planProperties),
};

/** The eight points of the compass, clockwise from north. */
export const compassPoints = [
  'north',
  'northeast',
  'east',
  'southeast',
  'south',
  'southwest',
  'west',
  'northwest',
] as const;

export const groundProperties = {
  surface: property('surface', reference('surface', 'surface'), {
    doc: term('doc.ground--surface'),
    example: 'surface asphalt',
    required: true,
  }),
  grade: property(
    'grade',
    sequence(
      quantity('grade', ['ratio', 'angle'], { percent: true, atLeast: 0, atMost: 1 }),
      optional(sequence(word('toward'), choice('toward', 'front', 'rear', 'driver side', 'passenger side'))),
    ),
    {
      doc: term('doc.ground--grade'),
      example: 'grade 1.5 % toward rear',
    },
  ),
  compass: property('compass', sequence(word('front faces'), choice('facing', ...compassPoints)), {
    doc: term('doc.ground--compass'),
    example: 'compass front faces northwest',
  }),
};

export const ground: BlockSchema = {
  keyword: 'ground',
  once: true,
  within: ['plan'],
  doc: term('doc.ground'),
  example: 'ground {\n  surface asphalt\n  grade 1.5 % toward rear\n}',
  head: { name: 'none' },
  declares: undefined,
  element: 'ground',
  bodyOptional: false,
  properties: Object.values(groundProperties),
};

const found = (key: string, doc: Message) =>
  property(key, text('finding', 'what was found'), { doc, example: `${key} "none seen"` });

export const sizeUpProperties = {
  fuel: found('fuel', term('doc.size-up--fuel')),
  battery: found('battery', term('doc.size-up--battery')),
  cargo: found('cargo', term('doc.size-up--cargo')),
  brakes: found('brakes', term('doc.size-up--brakes')),
  occupants: found('occupants', term('doc.size-up--occupants')),
  hazards: found('hazards', term('doc.size-up--hazards')),
  doors: found('doors', term('doc.size-up--doors')),
  overhead: found('overhead', term('doc.size-up--overhead')),
  traffic: found('traffic', term('doc.size-up--traffic')),
};

export const sizeUp: BlockSchema = {
  keyword: 'size up',
  within: ['plan'],
  doc: term('doc.size-up'),
  example: 'size up {\n  fuel "no leak seen"\n  battery "none"\n}',
  head: { name: 'none' },
  declares: undefined,
  element: 'size up',
  bodyOptional: false,
  properties: Object.values(sizeUpProperties),
};

export const loadProperties = {
  on: property('on', reference('vehicle', 'vehicle'), {
    doc: term('doc.load--on'),
    example: 'on car',
    required: true,
  }),
  at: property(
    'at',
    sequence(
      along,
      optional(
        sequence(symbol(','), choice('side', 'driver side', 'passenger side'), quantity('offset', 'length')),
      ),
      optional(sequence(symbol(','), quantity('high', 'length'), word('high'))),
    ),
    {
      doc: term('doc.load--at'),
      example: 'at 24 ft, driver side 2 ft, 3 ft high',
      required: true,
    },
  ),
  force: property('force', quantity('force', ['force', 'mass'], { range: true }), {
    doc: term('doc.load--force'),
    example: 'force 800 lb',
    required: true,
  }),
  toward: property(
    'toward',
    choice('toward', 'front', 'rear', 'driver side', 'passenger side', 'up', 'down'),
    {
      doc: term('doc.load--toward'),
      example: 'toward passenger side',
      required: true,
    },
  ),
};

export const load: BlockSchema = {
  keyword: 'load',
  within: ['plan'],
  doc: term('doc.load'),
  example:
    'load spreader {\n  on car\n  at 24 ft, driver side 2 ft, 3 ft high\n  force 2,000 lb\n  toward passenger side\n}',
  head: { name: 'required' },
  declares: 'load',
  element: 'load',
  bodyOptional: false,
  properties: Object.values(loadProperties),
};

const spot = sequence(
  along,
  optional(
    sequence(symbol(','), choice('side', 'driver side', 'passenger side'), quantity('offset', 'length')),
  ),
);

export const egressProperties = {
  from: property('from', spot, {
    doc: term('doc.egress--from'),
    example: 'from 24 ft, driver side 5 ft',
    required: true,
  }),
  to: property('to', spot, {
    doc: term('doc.egress--to'),
    example: 'to 24 ft, driver side 20 ft',
    required: true,
    repeatable: true,
  }),
  width: property('width', extent('width'), {
    doc: term('doc.egress--width'),
    example: 'width 3 ft',
  }),
};

export const egress: BlockSchema = {
  keyword: 'egress',
  within: ['plan'],
  doc: term('doc.egress'),
  example: 'egress Back {\n  from 24 ft, driver side 5 ft\n  to 24 ft, driver side 20 ft\n}',
  head: { name: 'required' },
  declares: 'egress',
  element: 'egress',
  bodyOptional: false,
  properties: Object.values(egressProperties),
};

export const planParts: readonly BlockSchema[] = [ground, sizeUp, load, egress];
