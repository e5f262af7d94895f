import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { argumentList, expression, name, optional, reference, sequence, symbol } from '../phrase/pattern.js';

/** What a parameter of a pattern may be: a kind of quantity, or a kind of thing. */
export const parameterTypes = [
  'length',
  'weight',
  'angle',
  'ratio',
  'count',
  'part',
  'vehicle',
  'timber',
  'strut type',
  'strap type',
] as const;

/** `let gap = trailer rail height - A height` */
export const letLine = property('let', sequence(name('name', 'value'), symbol('='), expression('value')), {
  doc: term('doc.pattern--let'),
  example: 'let gap = trailer rail height - A height',
  repeatable: true,
});

/** `PairUnder East(rail = trailer rail, reach = 24 in)`. Not in any block's list: it starts with the pattern's name. */
export const patternUse = property(
  'pattern use',
  sequence(reference('pattern', 'pattern'), optional(name('name', 'group')), argumentList('arguments')),
  {
    doc: term('doc.pattern--use'),
    example: 'PairUnder(rail = trailer rail, reach = 24 in)',
    repeatable: true,
  },
);

export const pattern: BlockSchema = {
  keyword: 'pattern',
  within: ['file'],
  doc: term('doc.pattern'),
  example:
    'pattern PairUnder(rail: part, reach: length) {\n  crib A {\n    at reach, driver side 3 ft\n    captures rail\n  }\n}',
  head: { name: 'required', parameters: true },
  declares: 'pattern',
  bodyOptional: false,
  ownScope: true,
  properties: [],
};
