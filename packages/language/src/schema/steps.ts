import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { supportKinds } from '../kind/support-kinds.js';
import {
  anyOrder,
  choice,
  count,
  either,
  group,
  list,
  optional,
  quantity,
  reference,
  sequence,
  text,
  word,
} from '../phrase/pattern.js';

/** Seconds: one day. Longer is a slip of the keyboard, and would make a time line that nobody can read. */
const longestStep = 86_400;

const targets = list('targets', reference('support', ...supportKinds));

export const stepLine = property(
  'step',
  sequence(
    either(
      group(
        'chock',
        sequence(
          word('chock'),
          either(
            sequence(
              reference('vehicle', 'vehicle'),
              optional(reference('axle', 'axle')),
              optional(choice('ways', 'both directions', 'forward', 'rearward')),
            ),
            list('chocks', reference('support', 'chock')),
          ),
        ),
      ),
      group('capture', sequence(word('capture'), reference('vehicle', 'vehicle'))),
      group(
        'work',
        sequence(choice('action', 'build', 'slide', 'set', 'lock', 'tension', 'check', 'remove'), targets),
      ),
      group('sizeUp', sequence(choice('action', 'size up'), optional(reference('vehicle', 'vehicle')))),
    ),
    anyOrder(
      sequence(word('crew'), count('crew', { atLeast: 1 })),
      sequence(word('takes'), quantity('takes', 'duration', { range: true, atMost: longestStep })),
      sequence(
        word('with'),
        optional(word('cribs', 'chocks', 'crib', 'step chocks')),
        list('with', reference('support', 'crib', 'step chock', 'chock', 'strut')),
      ),
      sequence(word('after'), list('after', count('step'))),
      sequence(word('note'), text('note', 'what to mind')),
    ),
  ),
  {
    doc: term('doc.steps--step'),
    example: '1 chock trailer both directions crew 1 takes 1 min',
    repeatable: true,
  },
);

export const steps: BlockSchema = {
  keyword: 'steps',
  within: ['plan'],
  doc: term('doc.steps'),
  example:
    'steps {\n  1 chock trailer both directions  crew 1  takes 1 min\n  2 build A  crew 2  takes 5 min\n}',
  head: { name: 'none' },
  declares: undefined,
  element: 'steps',
  bodyOptional: false,
  properties: [],
  numbered: stepLine,
};
