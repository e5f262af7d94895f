import { messages } from '../../finding/message.js';

/** Every sentence of the rule. */
export const words = {
  short:
    'Crib {crib} does not reach {part}: {gap} is left open ({sum}) and its wedges close {closes}. {advice}',
  tall: 'Crib {crib} is too tall for {part}: it would need {over} more room ({sum}). {advice}',
  loose:
    'Crib {crib}: its wedges close at least {closes}, and only {gap} is open ({sum}). They do not go in. {advice}',
  'step-none': 'Step chock {chock} is too tall for {part} at every step. Use a lower one.',
  'step-gap':
    'Step chock {chock}: {gap} is left open between its step and {part} ({sum}). Slide it in to another step, or fill the gap with a wedge.',
  'step-beside': 'Step chock {chock} stands beside {part}, {off} off it. Slide it under.',
  'use-courses': 'Use {courses} courses: {gap} is then left for the wedges.',
  'use-shims': 'Put {shims} of shims under the load.',
  'measure-first': 'Measure the gap and choose courses and shims to fit.',
  'fix-courses': 'Use {courses} courses',
  'fix-shims': 'Add {shims} of shims',
} as const;
export const say = messages('crib-reach', words);
