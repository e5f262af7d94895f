import { supportResults } from '../../analysis/support-results.js';
import { messages } from '../../finding/message.js';
import { expectationResults } from '../../review/expectations.js';
import { practice, type Rule } from '../rule.js';

const words = {
  unmet: 'The plan expects {text}. It does not hold: {why}.',
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
  check: (w, found) =>
    expectationResults(w.plan, {
      supports: w.plan.expectations.some((e) => e.kind === 'figure') ? supportResults(w, found) : [],
      findings: found,
    })
      .filter((e) => !e.held)
      .map((e) => ({
        subject: w.plan.ref,
        at: e.ref,
        message: say('unmet', { text: e.text, why: e.why }),
      })),
};
