import { shown, shownBeside } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { messages } from '../../finding/message.js';
import { strutUse } from '../../strut/strut-use.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import type { Workings } from '../../workings/workings.js';
import { practice, published, type Rule, type RuleFinding } from '../rule.js';

const words = {
  over: 'Strut {strut} may have to carry {load} ({governs}). At {length} it holds {capacity}. Use a stronger or shorter one, or more of them.',
  'over-limit':
    'Strut {strut} may have to carry {load} ({governs}), {use} of the {capacity} that it holds at {length}. The policy allows {limit}.',
  'no-rating':
    'Strut {strut}: nothing says what it holds at {length}, and it may have to carry {load}. Until then this check has not passed. Take the rating from its maker’s table.',
  'as-built': 'as built',
} as const;
const say = messages('strut-load', words);

function overload(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  const { load, use } = strutUse(s, w);
  const subject = { element: strut.id };
  // Not carrying, or not known to: the rules on locks, ties and resting say why.
  if (load.value === undefined || load.value.high <= 0) return undefined;
  const limit = w.limit('use limit');
  const beside = shownBeside(load, s.capacity);
  const shared = { strut: strut.name, load: beside.demand, length: shown(s.length) };
  const figures = [load, s.capacity, use];
  const governs = load.governs ?? say('as-built', {});
  const base = { subject, at: subject, figures, ...(load.governs === undefined ? {} : { governs }) };
  if (s.capacity.value === undefined)
    return { ...base, severity: 'warning', couldNotRun: true, message: say('no-rating', shared) };
  if (exceeds(load.value.high, s.capacity.value.low))
    return { ...base, message: say('over', { ...shared, governs, capacity: beside.limit }) };
  if (!exceeds(use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    figures: [...figures, limit],
    message: say('over-limit', {
      ...shared,
      governs,
      capacity: beside.limit,
      use: shown(use),
      limit: shown(limit),
    }),
  };
}

export const rule: Rule = {
  id: 'strut-load',
  title: 'Strut overloaded',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A strut loaded beyond its rating bends and folds without warning, sooner the longer it is.',
  sources: [practice, published('NDS 2018', '3.7.1, for timber posts')],
  compares: ['load', 'capacity', 'use', 'use limit'],
  words,
  check: (w) => w.struts().flatMap((s) => overload(s, w) ?? []),
};
