export { analyze, analyzeInSteps } from './analysis/analyze.js';
export type { Family, Rule, RuleFinding } from './definition/rule.js';
export { rules } from './generated/rule-index.js';
export { rulePages } from './generated/texts/rule-pages.js';
