import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { given } from '../../figure/compute.js';
import { length } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-long':
    'Strut {strut} has to be {length} long from head to base ({sum}). {gear} goes to {longest}. Use a longer one, or set the base nearer.',
  'too-short':
    'Strut {strut} has only {length} from head to base ({sum}). {gear} is at least {shortest}. Use a shorter one, or set the base farther out.',
} as const;
const say = messages('strut-length', words);

function misfit(s: StrutWorking): RuleFinding | undefined {
  const { gear } = s.strut;
  const value = s.length.value;
  if (value === undefined) return undefined;
  const longest = gear.kind === 'rated strut' ? gear.longest : gear.timber.length;
  const shortest = gear.kind === 'rated strut' ? gear.shortest : 0;
  const long = exceeds(value.high, longest);
  if (!long && !exceeds(shortest, value.low)) return undefined;
  const end = long ? 'longest' : 'shortest';
  const limit = given(
    length(end, message(`figure.${end}-of`, { strut: name(gear.name) }), long ? 'down' : 'up', {
      ref: gear.ref,
    }),
    exactly(long ? longest : shortest),
    gear.kind === 'rated strut' ? gear.source : gear.timber.source,
  );
  const beside = shownBeside(s.length, limit, long ? 'most' : 'least');
  const shared = {
    strut: s.strut.name,
    length: beside.demand,
    sum: calculation(s.length),
    gear: gear.name,
  };
  return {
    subject: { element: s.strut.id },
    at: { element: s.strut.id, property: 'base' },
    message: long
      ? say('too-long', { ...shared, longest: beside.limit })
      : say('too-short', { ...shared, shortest: shown(limit) }),
    figures: [s.length, limit],
    ...(value.low === value.high
      ? {}
      : { governs: long ? term('figure.the-high-end-of-the-head') : term('figure.the-low-end-of-the-head') }),
  };
}

export const rule: Rule = {
  id: 'strut-length',
  title: 'Strut too short or too long for its place',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A strut that does not reach is stretched past its last hole, or stood on something loose.',
  sources: [practice],
  compares: ['length', 'longest', 'shortest'],
  words,
  check: (w) => w.struts().flatMap((s) => misfit(s) ?? []),
};
