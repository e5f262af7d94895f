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

export const planProperties = {
  policy: property('policy', reference('policy', 'policy'), {
    doc: 'The limits that the plan is checked against. Without this line the shipped policy holds.',
    example: 'policy CountyPolicy',
  }),
  units: property('units', choice('system', 'us', 'si'), {
    doc: 'The units that figures are shown in. Anything may be written in any unit.',
    example: 'units us',
  }),
  responding: property('responding', list('caches', reference('cache', 'cache')), {
    doc: 'The units that respond, by their caches. What the plan needs is compared with what they carry.',
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
      doc: 'How many people can work. Steps may not need more at any moment.',
      example: 'crew 6 people',
      repeatable: true,
    },
  ),
  lift: property('lift intended', nothing, {
    doc: 'Says that this plan means to lift. Without it, stabilizing gear is set snug and no lift is taken for granted.',
    example: 'lift intended',
  }),
  expect: expectation,
  accept,
};

/** One stabilization plan. */
export const plan: BlockSchema = {
  keyword: 'plan',
  within: ['file', 'site', 'lesson'],
  doc: 'One stabilization plan: the vehicles as found, what the crew puts in, and the order it is built in.',
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
    doc: 'What everything stands on. The surface says what it can bear and how it grips.',
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
      doc: 'How steeply the ground slopes, and toward which end or side it slopes down. Grade is rise over run.',
      example: 'grade 1.5 % toward rear',
    },
  ),
  compass: property('compass', sequence(word('front faces'), choice('facing', ...compassPoints)), {
    doc: 'Which way the front of the main vehicle points: the drawing then shows north.',
    example: 'compass front faces northwest',
  }),
};

export const ground: BlockSchema = {
  keyword: 'ground',
  once: true,
  within: ['plan'],
  doc: 'The ground under the vehicles and supports.',
  example: 'ground {\n  surface asphalt\n  grade 1.5 % toward rear\n}',
  head: { name: 'none' },
  declares: undefined,
  element: 'ground',
  bodyOptional: false,
  properties: Object.values(groundProperties),
};

const found = (key: string, doc: string) =>
  property(key, text('finding', 'what was found'), { doc, example: `${key} "none seen"` });

export const sizeUpProperties = {
  fuel: found('fuel', 'Fuel: tanks, leaks.'),
  battery: found('battery', 'High-voltage or starting batteries.'),
  cargo: found('cargo', 'What is carried, and whether it may move.'),
  brakes: found('brakes', 'Air brakes and the energy stored in them.'),
  occupants: found('occupants', 'People inside, and where.'),
  hazards: found('hazards', 'Other hazards.'),
  doors: found('doors', 'Doors, hood, anything that moves.'),
  overhead: found('overhead', 'Wires and structures overhead.'),
  traffic: found('traffic', 'Traffic and how it is held off.'),
};

export const sizeUp: BlockSchema = {
  keyword: 'size up',
  within: ['plan'],
  doc: 'What the size-up found. A plan that leaves one out is told so.',
  example: 'size up {\n  fuel "no leak seen"\n  battery "none"\n}',
  head: { name: 'none' },
  declares: undefined,
  element: 'size up',
  bodyOptional: false,
  properties: Object.values(sizeUpProperties),
};

export const loadProperties = {
  on: property('on', reference('vehicle', 'vehicle'), {
    doc: 'The vehicle that is pushed or loaded.',
    example: 'on car',
    required: true,
  }),
  at: property(
    'at',
    sequence(
      quantity('back', 'length'),
      optional(
        sequence(symbol(','), choice('side', 'driver side', 'passenger side'), quantity('offset', 'length')),
      ),
      optional(sequence(symbol(','), quantity('high', 'length'), word('high'))),
    ),
    {
      doc: 'Where it acts, and how high.',
      example: 'at 24 ft, driver side 2 ft, 3 ft high',
      required: true,
    },
  ),
  force: property('force', quantity('force', ['force', 'mass'], { range: true }), {
    doc: 'How hard.',
    example: 'force 800 lb',
    required: true,
  }),
  toward: property(
    'toward',
    choice('toward', 'front', 'rear', 'driver side', 'passenger side', 'up', 'down'),
    {
      doc: 'Which way it pushes.',
      example: 'toward passenger side',
      required: true,
    },
  ),
};

export const load: BlockSchema = {
  keyword: 'load',
  within: ['plan'],
  doc: 'A push or weight put on while crews work: a spreader on a pillar, a rescuer on a roof.',
  example:
    'load spreader {\n  on car\n  at 24 ft, driver side 2 ft, 3 ft high\n  force 2,000 lb\n  toward passenger side\n}',
  head: { name: 'required' },
  declares: 'load',
  element: 'load',
  bodyOptional: false,
  properties: Object.values(loadProperties),
};

const spot = sequence(
  quantity('back', 'length'),
  optional(
    sequence(symbol(','), choice('side', 'driver side', 'passenger side'), quantity('offset', 'length')),
  ),
);

export const egressProperties = {
  from: property('from', spot, {
    doc: 'Where the rescuer kneels.',
    example: 'from 24 ft, driver side 5 ft',
    required: true,
  }),
  to: property('to', spot, {
    doc: 'The next corner of the path, up to where it is safe.',
    example: 'to 24 ft, driver side 20 ft',
    required: true,
    repeatable: true,
  }),
  width: property('width', extent('width'), {
    doc: 'How wide it is kept clear. Without it, the width that the policy asks for.',
    example: 'width 3 ft',
  }),
};

export const egress: BlockSchema = {
  keyword: 'egress',
  within: ['plan'],
  doc: 'The path by which a rescuer leaves. It is kept clear of supports and tools.',
  example: 'egress Back {\n  from 24 ft, driver side 5 ft\n  to 24 ft, driver side 20 ft\n}',
  head: { name: 'required' },
  declares: 'egress',
  element: 'egress',
  bodyOptional: false,
  properties: Object.values(egressProperties),
};

export const planParts: readonly BlockSchema[] = [ground, sizeUp, load, egress];
