import { term } from '@cribwright/messages';
import { property } from '../bound/block-schema.js';
import { supportKinds } from '../kind/support-kinds.js';
import { date, reference, rule, sequence, text, word } from '../phrase/pattern.js';

export const accept = property(
  'accept',
  sequence(
    rule('rule'),
    word('on'),
    reference('on', ...supportKinds, 'vehicle', 'step', 'egress'),
    word('because'),
    text('reason', 'reason'),
    word('by'),
    text('by', 'name'),
    word('until'),
    date('until'),
  ),
  {
    doc: term('doc.accept--accept'),
    example:
      'accept strut-one-sided on S1 because "wall on the other side" by "training captain" until 2027-03-01',
    repeatable: true,
  },
);
