import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import type { TieWorking } from '@cribwright/engine/internal';
import { gearFixes, tieUse } from '@cribwright/engine/internal';
import { calculation, message, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

function overload(t: TieWorking, w: Workings): RuleFinding | undefined {
  const { tie } = t;
  const { load, use } = tieUse(t, w);
  const subject = { element: tie.id };
  // No pull, or one that is not known: the strut's own rules say why.
  if (load.value === undefined || load.value.high <= 0) return undefined;
  const words = elementMessage(w.plan, tie.id);
  const beside = shownBeside(load, t.capacity);
  const governs = load.governs ?? term('figure.as-built');
  const base = {
    fixes: gearFixes(tie, w.plan),
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
      message: message('tie-load.no-rating', { tie: words, load: beside.demand }),
    };
  const shared = { tie: words, load: beside.demand, governs, capacity: beside.limit };
  if (exceeds(load.value.high, t.capacity.value.low)) {
    const pull = load.inputs.find((i) => i.key === 'load') ?? load;
    return { ...base, message: message('tie-load.over', { ...shared, sum: calculation(pull) }) };
  }
  const limit = w.limit('use limit');
  if (!exceeds(use.value?.high ?? 0, limit.value?.low ?? 1)) return undefined;
  return {
    ...base,
    figures: [...base.figures, limit],
    message: message('tie-load.over-limit', { ...shared, use: shown(use), limit: shown(limit) }),
  };
}

export const rule: Rule = {
  id: 'tie-load',
  title: term('tie-load.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'plan',
  protects: term('tie-load.protects'),
  sources: [practice, published('49 CFR 393.108', 'working load limits of unmarked gear')],
  compares: ['load', 'capacity', 'use', 'use limit'],
  check: (w) => w.ties().flatMap((t) => overload(t, w) ?? []),
};
