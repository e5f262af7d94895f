import type { Finding, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { isDate, stands } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import type { Acceptance } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function judge(a: Acceptance, w: Workings, found: readonly Finding[]): RuleFinding | undefined {
  const { today } = w.options;
  const what = { by: name(a.by), rule: name(a.rule), on: elementMessage(w.plan, a.on) };
  const dated = { ...what, until: name(a.until) };
  const base = { subject: { element: a.on }, at: a.ref };
  if (!isDate(a.until))
    return { ...base, message: message('acceptance-expired.bad-date', { until: name(a.until) }) };
  const about = found.some((f) => f.rule === a.rule && f.subject.element === a.on);
  if (!about) return { ...base, severity: 'note', message: message('acceptance-expired.no-finding', what) };
  if (today === undefined || !isDate(today))
    return { ...base, couldNotRun: true, message: message('acceptance-expired.no-day', dated) };
  return stands(a, today) ? undefined : { ...base, message: message('acceptance-expired.expired', dated) };
}

export const rule: Rule = {
  id: 'acceptance-expired',
  title: term('acceptance-expired.title'),
  family: 'policy and review',
  severity: 'warning',
  judges: 'element',
  protects: term('acceptance-expired.protects'),
  sources: [practice],
  compares: [],
  phase: 'review',
  check: (w, found) => w.plan.acceptances.flatMap((a) => judge(a, w, found) ?? []),
};
