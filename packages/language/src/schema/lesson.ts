import { type BlockSchema, property } from '../bound/block-schema.js';
import { choice, count, either, optional, reference, sequence, text, word } from '../phrase/pattern.js';
import { figureNames, supportKinds } from './expect.js';

export const exerciseProperties = {
  plan: property('plan', reference('plan', 'plan'), {
    doc: 'The plan that it is about. Needed where the lesson has more than one.',
    example: 'plan Quiz',
  }),
  ask: property('ask', text('ask', 'question'), {
    doc: 'The question in your own words.',
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
      doc: 'A figure to work out. The key is computed from the plan, never typed.',
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
      doc: 'A fault to find. The key is what the checks find.',
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
      doc: 'A support to finish, so that the plan holds. The named line is left blank on the handout.',
      example: 'finish A leave out "courses"',
    },
  ),
  hint: property('hint', text('hint', 'hint'), {
    doc: 'A hint.',
    example: 'hint "Which contacts carry?"',
    repeatable: true,
  }),
  points: property('points', count('points', { atLeast: 0 }), {
    doc: 'What it counts.',
    example: 'points 2',
  }),
};

export const exercise: BlockSchema = {
  keyword: 'exercise',
  within: ['lesson'],
  doc: 'Something for the student to do on a plan.',
  example: 'exercise Height {\n  ask "How high may crib A stand?"\n  work out height limit of A\n}',
  head: { name: 'optional', title: 'optional' },
  declares: 'exercise',
  bodyOptional: false,
  properties: Object.values(exerciseProperties),
};

export const lessonProperties = {
  about: property('about', text('about', 'what it teaches'), {
    doc: 'What it teaches.',
    example: 'about "Height and width of a crib"',
  }),
  read: property('read', text('read', 'paragraph'), {
    doc: 'A paragraph of the handout.',
    example: 'read "A crib is only as high as its contacts are wide."',
    repeatable: true,
  }),
};

export const lesson: BlockSchema = {
  keyword: 'lesson',
  within: ['file'],
  doc: 'A lesson: text, plans, and exercises on them. Keys are computed.',
  example: 'lesson "How high may it stand" {\n  about "Height and width of a crib"\n}',
  head: { name: 'optional', title: 'required' },
  declares: 'lesson',
  element: 'lesson',
  bodyOptional: false,
  properties: Object.values(lessonProperties),
};

export const lessonBlocks: readonly BlockSchema[] = [lesson, exercise];
