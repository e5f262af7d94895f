import type { Finding } from '../finding/finding.js';
import { messages } from '../finding/message.js';
import type { Workings } from '../workings/workings.js';
import type { Rule } from './rule.js';

/** Said of a rule that broke. Part of every rule's table of words. */
export const failureWords = {
  'could-not-run':
    'The check {rule} could not run on this plan. Nothing is known about what it protects against: {protects}',
} as const;

const say = messages('rule', failureWords);

/** Runs every rule by itself. One that throws becomes a finding that says so; the others go on. */
export function runRules(rules: readonly Rule[], w: Workings): readonly Finding[] {
  return rules.flatMap((rule) => {
    try {
      return rule.check(w).map((f) => ({
        ...f,
        rule: rule.id,
        severity: f.severity ?? rule.severity,
        figures: f.figures ?? [],
        related: f.related ?? [],
        fixes: f.fixes ?? [],
      }));
    } catch {
      return [couldNotRun(rule, w)];
    }
  });
}

const couldNotRun = (rule: Rule, w: Workings): Finding => ({
  rule: rule.id,
  severity: 'danger',
  subject: w.plan.ref,
  at: w.plan.ref,
  message: say('could-not-run', { rule: rule.id, protects: rule.protects }),
  figures: [],
  related: [],
  fixes: [],
  couldNotRun: true,
});

const order = { danger: 0, warning: 1, note: 2 } as const;

/** The worst first; otherwise as found. */
export const bySeverity = (a: Finding, b: Finding): number => order[a.severity] - order[b.severity];
