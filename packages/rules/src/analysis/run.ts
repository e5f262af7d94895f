import type { Finding, Workings } from '@cribwright/engine';
import { inOneGo, LoadsLater, withAcceptances } from '@cribwright/engine/internal';
import { message, name } from '@cribwright/messages';
import type { Rule } from '../definition/rule.js';
import { isWithheld } from './withheld.js';

/**
 * Runs every rule by itself. One that throws becomes a finding that says so; the others go on. Rules of the review
 * phase come last and see what the others found, acceptances already put on it.
 */
export const runRules = (rules: readonly Rule[], w: Workings): readonly Finding[] =>
  inOneGo(runRulesInSteps(rules, w));

/** The same, and stops after each rule. Before the loads are there, rules that hang on them are left out. */
export function* runRulesInSteps(rules: readonly Rule[], w: Workings): Generator<void, readonly Finding[]> {
  const found: Finding[] = [];
  for (const rule of rules.filter((r) => r.phase === undefined && !isWithheld(r, w.plan))) {
    found.push(...runOne(rule, w, []));
    yield;
  }
  const first = withAcceptances(found, w);
  // A review of part of the findings would judge wrongly.
  if (w.options.loads === false) return first;
  return [...first, ...rules.flatMap((r) => (r.phase === 'review' ? runOne(r, w, first) : []))];
}

function runOne(rule: Rule, w: Workings, found: readonly Finding[]): readonly Finding[] {
  try {
    return rule.check(w, found).map((f) => ({
      ...f,
      rule: rule.id,
      severity: f.severity ?? rule.severity,
      figures: f.figures ?? [],
      related: f.related ?? [],
      fixes: f.fixes ?? [],
    }));
  } catch (why) {
    return why instanceof LoadsLater ? [] : [couldNotRun(rule, w)];
  }
}

const couldNotRun = (rule: Rule, w: Workings): Finding => ({
  rule: rule.id,
  severity: 'danger',
  subject: w.plan.ref,
  at: w.plan.ref,
  message: message('rule.could-not-run', { rule: name(rule.id), protects: rule.protects }),
  figures: [],
  related: [],
  fixes: [],
  couldNotRun: true,
});

const order = { danger: 0, warning: 1, note: 2 } as const;

/** The worst first; otherwise as found. */
export const bySeverity = (a: Finding, b: Finding): number => order[a.severity] - order[b.severity];
