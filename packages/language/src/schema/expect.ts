import { term } from '@cribwright/messages';
import { property } from '../bound/block-schema.js';
import { supportKinds } from '../kind/support-kinds.js';
import {
  choice,
  count,
  either,
  flag,
  optional,
  quantity,
  reference,
  rule,
  sequence,
  word,
} from '../phrase/pattern.js';

/** Figures of a support that a plan may name. */
export const figureNames = [
  'height',
  'height limit',
  'capacity',
  'load',
  'use',
  'angle',
  'pressure',
  'width',
  'overhang',
  'gap',
] as const;

export const expectation = property(
  'expect',
  either(
    flag('safe', 'safe'),
    sequence(
      choice('figure', ...figureNames),
      word('on', 'of'),
      reference('on', ...supportKinds),
      optional(sequence(word('contact'), count('contact', { atLeast: 1 }))),
      optional(flag('about', 'about')),
      quantity('value', ['length', 'force', 'ratio', 'angle', 'pressure'], { range: true }),
      optional(sequence(word('within'), quantity('within', 'ratio'))),
    ),
    sequence(
      rule('rule'),
      optional(sequence(word('on'), reference('on', ...supportKinds, 'vehicle', 'step', 'load', 'egress'))),
    ),
  ),
  {
    doc: term('doc.expect--expect'),
    example: 'expect crib-height on A',
    repeatable: true,
  },
);
