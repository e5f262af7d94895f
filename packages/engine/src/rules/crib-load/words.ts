import { messages } from '../../finding/message.js';

/** Every sentence of the rule. */
export const words = {
  'over-contact':
    'Crib {crib} contact {contact} may have to carry {load} ({governs}). It holds {capacity} ({sum}). Spread the load over more contacts, or use larger timbers.',
  'over-whole':
    'Crib {crib} may have to carry {load} ({governs}). Its {contacts} loaded contacts hold {capacity} ({sum}). Add a crib, or use larger timbers.',
  'over-limit':
    'Crib {crib} contact {contact} may have to carry {load} ({governs}), {use} of the {capacity} that it holds. The policy allows {limit}.',
  unknown: 'Crib {crib}: nobody knows what it has to carry. {why} Until then this check has not passed.',
  'step-over':
    'Step chock {chock} may have to carry {load} ({governs}). It holds {capacity}. Use a crib, or more of them.',
  'step-unrated':
    'Step chock {chock}: nobody knows what it holds, and it may have to carry {load}. Until then this check has not passed. Take the rating from its maker.',
  'step-unknown':
    'Step chock {chock}: nobody knows what it has to carry. {why} Until then this check has not passed.',
  'weigh-it': 'Give the weight and the place of the center of gravity of what rests on it.',
  'as-built': 'as built',
  'fix-build': 'Build it {layout} of {timber}, {courses} courses ({use} of its capacity)',
} as const;
export const say = messages('crib-load', words);
