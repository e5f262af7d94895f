import { calculation, shown, shownBeside } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { messages } from '../../finding/message.js';
import { tieUse } from '../../strut/tie-use.js';
import type { TieWorking } from '../../strut/tie-working.js';
import type { Workings } from '../../workings/workings.js';
import { practice, published, type Rule, type RuleFinding } from '../rule.js';

const words = {
  over: '{tie} may have to pull {load} ({governs}): {sum}. Its working load limit is {capacity}. Use a stronger one, or two, or stand the struts steeper.',
  'over-limit':
    '{tie} may have to pull {load} ({governs}), {use} of its working load limit of {capacity}. The policy allows {limit}.',
  'no-rating':
    '{tie}: nobody knows its working load limit, and it may have to pull {load}. Until then this check has not passed. Read its tag.',
  'as-built': 'as built',
} as const;
const say = messages('tie-load', words);

function overload(t: TieWorking, w: Workings): RuleFinding | undefined {
  const { tie } = t;
  const { load, use } = tieUse(t, w);
  const subject = { element: tie.id };
  // No pull, or one that is not known: the strut's own rules say why.
  if (load.value === undefined || load.value.high <= 0) return undefined;
  const name = `${tie.gear.kind} ${tie.name}`;
  const beside = shownBeside(load, t.capacity);
  const governs = load.governs ?? say('as-built', {});
  const base = {
    subject,
    at: subject,
    figures: [load, t.capacity, use],
    ...(load.governs === undefined ? {} : { governs }),
  };
  if (t.capacity.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: say('no-rating', { tie: name, load: beside.demand }),
    };
  const shared = { tie: name, load: beside.demand, governs, capacity: beside.limit };
  if (exceeds(load.value.high, t.capacity.value.low)) {
    const pull = load.inputs.find((i) => i.key === 'load') ?? load;
    return { ...base, message: say('over', { ...shared, sum: calculation(pull) }) };
  }
  const limit = w.limit('use limit');
  if (!exceeds(use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    figures: [...base.figures, limit],
    message: say('over-limit', { ...shared, use: shown(use), limit: shown(limit) }),
  };
}

export const rule: Rule = {
  id: 'tie-load',
  title: 'Strap or chain overloaded',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A strap that parts lets both bases go at once.',
  sources: [practice, published('49 CFR 393.108', 'working load limits of unmarked gear')],
  compares: ['load', 'capacity', 'use', 'use limit'],
  words,
  check: (w) => w.ties().flatMap((t) => overload(t, w) ?? []),
};
