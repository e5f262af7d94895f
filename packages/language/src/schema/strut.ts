import { type Message, term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import type { Kind } from '../kind/kind.js';
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
import { anchor, andThen, placeAlong } from './phrases.js';

export const strutProperties = {
  head: property(
    'head',
    sequence(
      optional(reference('vehicle', 'vehicle')),
      part('part', 'vehicle'),
      optional(word('near', 'at')),
      placeAlong,
      andThen(sequence(quantity('high', 'length', { range: true }), word('high'))),
    ),
    {
      doc: term('doc.strut--head'),
      example: 'head trailer joist near 26 ft, passenger side',
      required: true,
    },
  ),
  foot: property(
    'base',
    sequence(
      either(sequence(quantity('out', 'length'), word('out')), sequence(word('at'), placeAlong)),
      andThen(sequence(word('on pad'), reference('pad', 'pad'))),
    ),
    {
      doc: term('doc.strut--base'),
      example: 'base 4 ft out',
      required: true,
    },
  ),
  angle: property('angle', quantity('angle', 'angle'), {
    doc: term('doc.strut--angle'),
    example: 'angle 45 deg',
  }),
  lock: property('lock', choice('lock', 'pinned', 'collar', 'pump only'), {
    doc: term('doc.strut--lock'),
    example: 'lock pinned',
  }),
  preload: property('preload', quantity('preload', ['force', 'mass']), {
    doc: term('doc.strut--preload'),
    example: 'preload 200 lb',
  }),
};

export const strut: BlockSchema = {
  keyword: 'strut',
  within: ['plan', 'pattern'],
  doc: term('doc.strut'),
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
      doc: term('doc.tie--from'),
      example: 'from S1 base to S2 base',
      required: true,
    },
  ),
  to: property('to', group('to', anchor), {
    doc: term('doc.tie--to'),
    example: 'to S2 base',
  }),
  tension: property('tension', quantity('tension', ['force', 'mass']), {
    doc: term('doc.tie--tension'),
    example: 'tension 200 lb',
  }),
};

const tie = (keyword: string, type: Kind, doc: Message, gear: string): BlockSchema => ({
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

export const strap = tie('strap', 'strap type', term('doc.strap'), 'RatchetStrap2in');
export const chain = tie('chain', 'chain type', term('doc.chain'), 'Chain70_3_8in');
export const wireRope = tie('wire rope', 'wire rope type', term('doc.wire-rope'), 'WireRope_1_2in');

export const anchorProperties = {
  at: property('at', placeAlong, {
    doc: term('doc.anchor--at'),
    example: 'at 26 ft, driver side 14 ft',
    required: true,
  }),
  holds: property('holds', either(flag('unknown', 'unknown'), quantity('holds', ['force', 'mass'])), {
    doc: term('doc.anchor--holds'),
    example: 'holds 4,000 lb',
  }),
};

export const groundAnchor: BlockSchema = {
  keyword: 'anchor',
  within: ['plan', 'pattern'],
  doc: term('doc.anchor'),
  example: 'anchor Pickets {\n  at 26 ft, driver side 14 ft\n  holds 4,000 lb\n}',
  head: { name: 'required' },
  declares: 'anchor',
  element: 'anchor',
  bodyOptional: false,
  properties: Object.values(anchorProperties),
};

export const chockProperties = {
  under: property('under', sequence(reference('vehicle', 'vehicle'), optional(reference('axle', 'axle'))), {
    doc: term('doc.chock--under'),
    example: 'under trailer axle 2',
    required: true,
  }),
  holds: property('holds', choice('ways', 'both directions', 'forward', 'rearward'), {
    doc: term('doc.chock--holds'),
    example: 'holds both directions',
    required: true,
  }),
};

export const chock: BlockSchema = {
  keyword: 'chock',
  within: ['plan', 'pattern'],
  doc: term('doc.chock'),
  example: 'chock K1 {\n  under trailer axle 2\n  holds both directions\n}',
  head: { name: 'required' },
  declares: 'chock',
  element: 'chock',
  bodyOptional: false,
  properties: Object.values(chockProperties),
};

export const strutBlocks: readonly BlockSchema[] = [strut, strap, chain, wireRope, groundAnchor, chock];
