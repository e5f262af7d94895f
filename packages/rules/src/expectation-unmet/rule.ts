import type { Finding, Workings } from '@cribwright/engine';
import { expectationResults, supportResults } from '@cribwright/engine/internal';
import { message, term } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

export const rule: Rule = {
  id: 'expectation-unmet',
  title: term('expectation-unmet.title'),
  family: 'policy and review',
  severity: 'danger',
  judges: 'element',
  protects: term('expectation-unmet.protects'),
  sources: [practice],
  compares: [],
  phase: 'review',
  check: (w, found) => (w.plan.partial ? notCompared(w.plan) : unmet(w, found)),
};

/** Said once, however much the plan expects. */
const notCompared = (plan: Plan): readonly RuleFinding[] =>
  plan.expectations.length === 0 && (plan.unread ?? []).length === 0
    ? []
    : [{ subject: plan.ref, at: plan.ref, message: term('expectation-unmet.partial'), couldNotRun: true }];

const unmet = (w: Workings, found: readonly Finding[]): readonly RuleFinding[] =>
  expectationResults(w.plan, {
    supports: w.plan.expectations.some((e) => e.kind === 'figure') ? supportResults(w, found) : [],
    findings: found,
  })
    .filter((e) => !e.held)
    .map((e) => ({
      subject: w.plan.ref,
      at: e.ref,
      message: message('expectation-unmet.unmet', { text: e.text, why: e.why }),
    }));
