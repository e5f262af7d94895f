import type { Finding } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import type { Acceptance } from '../../model/plan.js';
import { isDate, stands } from '../../review/acceptances.js';
import { elementWords } from '../../workings/element-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  expired:
    '{by} accepted {rule} on {on} until {until}, and that day is past. Look again: mend it, or accept it anew.',
  'no-day':
    'Nothing says what day it is, so nobody knows whether what {by} accepted ({rule} on {on}, until {until}) still stands. It does not count.',
  'bad-date': 'The date {until} cannot be read. Write it as year-month-day: 2027-03-01.',
  'no-finding': '{by} accepted {rule} on {on}, and {rule} finds nothing there. Take the line out.',
} as const;
const say = messages('acceptance-expired', words);

function judge(a: Acceptance, w: Workings, found: readonly Finding[]): RuleFinding | undefined {
  const { today } = w.options;
  const holes = { by: a.by, rule: a.rule, on: elementWords(w.plan, a.on), until: a.until };
  const base = { subject: { element: a.on }, at: a.ref };
  if (!isDate(a.until)) return { ...base, message: say('bad-date', { until: a.until }) };
  const about = found.some((f) => f.rule === a.rule && f.subject.element === a.on);
  if (!about) return { ...base, severity: 'note', message: say('no-finding', holes) };
  if (today === undefined || !isDate(today))
    return { ...base, couldNotRun: true, message: say('no-day', holes) };
  return stands(a, today) ? undefined : { ...base, message: say('expired', holes) };
}

export const rule: Rule = {
  id: 'acceptance-expired',
  title: 'Acceptance that has run out',
  family: 'policy and review',
  severity: 'warning',
  protects: 'What was accepted for a time is not accepted for ever.',
  sources: [practice],
  compares: [],
  words,
  phase: 'review',
  check: (w, found) => w.plan.acceptances.flatMap((a) => judge(a, w, found) ?? []),
};
