import { term } from '@cribwright/messages';
import { type BlockSchema, property } from '../bound/block-schema.js';
import { supportKinds } from '../kind/support-kinds.js';
import { choice, count, either, optional, reference, sequence, text, word } from '../phrase/pattern.js';
import { figureNames } from './expect.js';

export const exerciseProperties = {
  plan: property('plan', reference('plan', 'plan'), {
    doc: term('doc.exercise--plan'),
    example: 'plan Quiz',
  }),
  ask: property('ask', text('ask', 'question'), {
    doc: term('doc.exercise--ask'),
    example: 'ask "How high may crib A stand?"',
  }),
  workOut: property(
    'work out',
    sequence(
      choice('figure', ...figureNames),
      word('of', 'on'),
      reference('on', ...supportKinds),
      optional(sequence(word('contact'), count('contact', { atLeast: 1 }))),
    ),
    {
      doc: term('doc.exercise--work-out'),
      example: 'work out height limit of A',
    },
  ),
  find: property(
    'find',
    sequence(
      either(
        sequence(
          word('fault'),
          optional(sequence(word('on'), reference('on', ...supportKinds, 'vehicle', 'step'))),
        ),
        word('every fault'),
      ),
    ),
    {
      doc: term('doc.exercise--find'),
      example: 'find fault on B',
    },
  ),
  finish: property(
    'finish',
    sequence(
      reference('on', ...supportKinds),
      optional(sequence(word('leave out'), text('leaveOut', 'line left out'))),
    ),
    {
      doc: term('doc.exercise--finish'),
      example: 'finish A leave out "courses"',
    },
  ),
  hint: property('hint', text('hint', 'hint'), {
    doc: term('doc.exercise--hint'),
    example: 'hint "Which contacts carry?"',
    repeatable: true,
  }),
  points: property('points', count('points', { atLeast: 0 }), {
    doc: term('doc.exercise--points'),
    example: 'points 2',
  }),
};

export const exercise: BlockSchema = {
  keyword: 'exercise',
  within: ['lesson'],
  doc: term('doc.exercise'),
  example: 'exercise Height {\n  ask "How high may crib A stand?"\n  work out height limit of A\n}',
  head: { name: 'optional', title: 'optional' },
  declares: 'exercise',
  bodyOptional: false,
  properties: Object.values(exerciseProperties),
};

export const lessonProperties = {
  about: property('about', text('about', 'what it teaches'), {
    doc: term('doc.lesson--about'),
    example: 'about "Height and width of a crib"',
  }),
  read: property('read', text('read', 'paragraph'), {
    doc: term('doc.lesson--read'),
    example: 'read "A crib is only as high as its contacts are wide."',
    repeatable: true,
  }),
};

export const lesson: BlockSchema = {
  keyword: 'lesson',
  within: ['file'],
  doc: term('doc.lesson'),
  example: 'lesson "How high may it stand" {\n  about "Height and width of a crib"\n}',
  head: { name: 'optional', title: 'required' },
  declares: 'lesson',
  element: 'lesson',
  bodyOptional: false,
  properties: Object.values(lessonProperties),
};

export const lessonBlocks: readonly BlockSchema[] = [lesson, exercise];
