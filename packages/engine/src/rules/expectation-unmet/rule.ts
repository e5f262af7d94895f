import { supportResults } from '../../analysis/support-results.js';
import type { Finding } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import type { Plan } from '../../model/plan.js';
import { expectationResults } from '../../review/expectations.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  unmet: 'The plan expects {text}. It does not hold: {why}.',
  partial: 'The plan was not read whole, so nothing that it expects is compared with what the checks find.',
} as const;
const say = messages('expectation-unmet', words);

export const rule: Rule = {
  id: 'expectation-unmet',
  title: 'Plan that does not come to what it expects',
  family: 'policy and review',
  severity: 'danger',
  protects: 'A plan that was right when it was written, and no longer is.',
  sources: [practice],
  compares: [],
  words,
  phase: 'review',
  check: (w, found) => (w.plan.partial ? notCompared(w.plan) : unmet(w, found)),
};

/** Said once, however much the plan expects. */
const notCompared = (plan: Plan): readonly RuleFinding[] =>
  plan.expectations.length === 0
    ? []
    : [{ subject: plan.ref, at: plan.ref, message: say('partial', {}), couldNotRun: true }];

const unmet = (w: Workings, found: readonly Finding[]): readonly RuleFinding[] =>
  expectationResults(w.plan, {
    supports: w.plan.expectations.some((e) => e.kind === 'figure') ? supportResults(w, found) : [],
    findings: found,
  })
    .filter((e) => !e.held)
    .map((e) => ({
      subject: w.plan.ref,
      at: e.ref,
      message: say('unmet', { text: e.text, why: e.why }),
    }));
