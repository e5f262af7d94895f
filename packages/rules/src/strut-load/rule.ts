import type { Workings } from '@cribwright/engine';
import type { StrutWorking } from '@cribwright/engine/internal';
import { gearFixes, strutUse, twinFixes } from '@cribwright/engine/internal';
import { message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

function overload(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  const { load, use } = strutUse(s, w);
  const subject = { element: strut.id };
  // Not carrying, or not known to: the rules on locks, ties and resting say why.
  if (load.value === undefined || load.value.high <= 0) return undefined;
  const limit = w.limit('use limit');
  const beside = shownBeside(load, s.capacity);
  const shared = { strut: name(strut.name), load: beside.demand, length: shown(s.length) };
  const figures = [load, s.capacity, use];
  const governs = load.governs ?? term('figure.as-built');
  const stronger = gearFixes(strut, w.plan);
  const fixes = [...stronger, ...twinFixes(strut, w)];
  const base = { subject, at: subject, figures, fixes, ...(load.governs === undefined ? {} : { governs }) };
  if (s.capacity.value === undefined)
    return {
      ...base,
      // More of what nobody knows the strength of is no help.
      fixes: stronger,
      severity: 'warning',
      couldNotRun: true,
      message: message('strut-load.no-rating', shared),
    };
  if (exceeds(load.value.high, s.capacity.value.low))
    return { ...base, message: message('strut-load.over', { ...shared, governs, capacity: beside.limit }) };
  if (!exceeds(use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    figures: [...figures, limit],
    message: message('strut-load.over-limit', {
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
  title: term('strut-load.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'plan',
  protects: term('strut-load.protects'),
  sources: [practice, published('NDS 2018', '3.7.1, for timber posts')],
  compares: ['load', 'capacity', 'use', 'use limit'],
  check: (w) => w.struts().flatMap((s) => overload(s, w) ?? []),
};
