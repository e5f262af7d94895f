import type { Finding } from '../finding/finding.js';
import type { Plan } from '../model/plan.js';
import type { Rule } from '../rules/rule.js';
import { runRules } from '../rules/run.js';
import type { AnalyzeOptions } from '../workings/support-workings.js';
import { workingsOf } from '../workings/workings.js';

/** What one rule finds in a plan. */
export const check = (rule: Rule, plan: Plan, options: AnalyzeOptions = {}): readonly Finding[] =>
  runRules([rule], workingsOf(plan, options));
