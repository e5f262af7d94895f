import { type BlockSchema, property } from '../bound/block-schema.js';
import type { Kind } from '../bound/kind.js';
import {
  choice,
  either,
  flag,
  group,
  optional,
  part,
  quantity,
  reference,
  sequence,
  word,
} from '../phrase/pattern.js';
import { anchor, andThen, place } from './phrases.js';

export const strutProperties = {
  head: property(
    'head',
    sequence(
      optional(reference('vehicle', 'vehicle')),
      part('part', 'vehicle'),
      optional(word('near', 'at')),
      place,
      andThen(sequence(quantity('high', 'length', { range: true }), word('high'))),
    ),
    {
      doc: 'The part that the head bears on, and where. Without a height, the underside of the part.',
      example: 'head trailer joist near 26 ft, passenger side',
      required: true,
    },
  ),
  foot: property(
    'base',
    sequence(
      either(sequence(quantity('out', 'length'), word('out')), sequence(word('at'), place)),
      andThen(sequence(word('on pad'), reference('pad', 'pad'))),
    ),
    {
      doc: 'Where the base stands: how far out from the head, or its own place.',
      example: 'base 4 ft out',
      required: true,
    },
  ),
  angle: property('angle', quantity('angle', 'angle'), {
    doc: 'What the angle to the ground is meant to be. The real one is worked out from head and base and compared.',
    example: 'angle 45 deg',
  }),
  lock: property('lock', choice('lock', 'pinned', 'collar', 'pump only'), {
    doc: 'How it is held once set. A pump alone is no lock.',
    example: 'lock pinned',
  }),
  preload: property('preload', quantity('preload', ['force', 'mass']), {
    doc: 'How hard it is set. Snug where nothing is said.',
    example: 'preload 200 lb',
  }),
};

export const strut: BlockSchema = {
  keyword: 'strut',
  within: ['plan', 'pattern'],
  doc: 'A strut from the ground to a part of the vehicle: it pushes, it never pulls.',
  example:
    'strut S1 : Strut4to8ft {\n  head  trailer joist near 26 ft, passenger side\n  base  4 ft out\n  angle 45 deg\n  lock  pinned\n}',
  head: { name: 'required', type: { kinds: ['strut type'], required: true, extends: false } },
  declares: 'strut',
  element: 'strut',
  bodyOptional: false,
  properties: Object.values(strutProperties),
};

export const tieProperties = {
  from: property(
    'from',
    sequence(group('from', anchor), optional(sequence(word('to'), group('to', anchor)))),
    {
      doc: 'What it is anchored to at one end and, after `to`, at the other: the base or head of a strut, a part of a vehicle, or an anchor.',
      example: 'from S1 base to S2 base',
      required: true,
    },
  ),
  to: property('to', group('to', anchor), {
    doc: 'What it is anchored to at the other end, on a line of its own.',
    example: 'to S2 base',
  }),
  tension: property('tension', quantity('tension', ['force', 'mass']), {
    doc: 'How hard it is pulled up. Hand-tight where nothing is said.',
    example: 'tension 200 lb',
  }),
};

const tie = (keyword: string, type: Kind, doc: string, gear: string): BlockSchema => ({
  keyword,
  within: ['plan', 'pattern'],
  doc,
  example: `${keyword} T1 : ${gear} { from S1 base to S2 base }`,
  head: { name: 'required', type: { kinds: [type], required: true, extends: false } },
  declares: 'tie',
  element: 'tie',
  bodyOptional: false,
  properties: Object.values(tieProperties),
});

export const strap = tie('strap', 'strap type', 'A strap: it pulls, it never pushes.', 'RatchetStrap2in');
export const chain = tie('chain', 'chain type', 'A chain: it pulls, it never pushes.', 'Chain70_3_8in');
export const wireRope = tie(
  'wire rope',
  'wire rope type',
  'A wire rope: it pulls, it never pushes.',
  'WireRope_1_2in',
);

export const anchorProperties = {
  at: property('at', place, {
    doc: 'Where it is in the ground.',
    example: 'at 26 ft, driver side 14 ft',
    required: true,
  }),
  holds: property('holds', either(flag('unknown', 'unknown'), quantity('holds', ['force', 'mass'])), {
    doc: 'What it can hold. Unknown is never taken as enough.',
    example: 'holds 4,000 lb',
  }),
};

export const groundAnchor: BlockSchema = {
  keyword: 'anchor',
  within: ['plan', 'pattern'],
  doc: 'Something in the ground that a strap or chain is anchored to: pickets, a tree, a guardrail.',
  example: 'anchor Pickets {\n  at 26 ft, driver side 14 ft\n  holds 4,000 lb\n}',
  head: { name: 'required' },
  declares: 'anchor',
  element: 'anchor',
  bodyOptional: false,
  properties: Object.values(anchorProperties),
};

export const chockProperties = {
  under: property('under', sequence(reference('vehicle', 'vehicle'), optional(reference('axle', 'axle'))), {
    doc: 'Whose wheels, and of which axle.',
    example: 'under trailer axle 2',
    required: true,
  }),
  holds: property('holds', choice('ways', 'both directions', 'forward', 'rearward'), {
    doc: 'The direction in which it keeps the wheels from rolling.',
    example: 'holds both directions',
    required: true,
  }),
};

export const chock: BlockSchema = {
  keyword: 'chock',
  within: ['plan', 'pattern'],
  doc: 'Wheel chocks.',
  example: 'chock K1 {\n  under trailer axle 2\n  holds both directions\n}',
  head: { name: 'required' },
  declares: 'chock',
  element: 'chock',
  bodyOptional: false,
  properties: Object.values(chockProperties),
};

export const strutBlocks: readonly BlockSchema[] = [strut, strap, chain, wireRope, groundAnchor, chock];
