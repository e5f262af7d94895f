import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import {
  count,
  either,
  extent,
  flag,
  group,
  optional,
  reference,
  sequence,
  word,
} from '../phrase/pattern.js';

export const stockLine = property(
  'stock',
  sequence(
    either(
      group('timber', sequence(reference('timber', 'timber'), extent('length'), optional(word('long')))),
      group(
        'gear',
        reference('type', 'strut type', 'strap type', 'chain type', 'wire rope type', 'step chock type'),
      ),
      flag('wedges', 'wedge pairs'),
      flag('chocks', 'wheel chocks'),
      flag('shims', 'shims'),
      group('pad', sequence(word('pads', 'pad'), extent('length'), word('by'), extent('width'))),
    ),
  ),
  {
    doc: term('doc.cache--stock'),
    example: '48 Fir4x4 24 in long',
    repeatable: true,
  },
);

export const cacheProperties = {
  staffing: property('staffing', count('people', { atLeast: 0 }), {
    doc: term('doc.cache--staffing'),
    example: 'staffing 4',
  }),
};

export const cache: BlockSchema = {
  keyword: 'cache',
  within: ['file'],
  doc: term('doc.cache'),
  example: 'cache Rescue12 "Rescue 12" {\n  staffing 4\n  48 Fir4x4 24 in long\n  24 wedge pairs\n}',
  head: { name: 'required', title: 'optional' },
  declares: 'cache',
  element: 'cache',
  bodyOptional: false,
  properties: Object.values(cacheProperties),
  numbered: stockLine,
};
