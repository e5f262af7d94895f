import type { AnalyzeOptions, Finding } from '@cribwright/engine';
import { workingsOf } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { runRules } from '../analysis/run.js';
import type { Rule } from '../definition/rule.js';

/** What one rule finds in a plan. */
export const check = (rule: Rule, plan: Plan, options: AnalyzeOptions = {}): readonly Finding[] =>
  runRules([rule], workingsOf(plan, options));
