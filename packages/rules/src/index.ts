export { analyze, analyzeInSteps } from './analysis/analyze.js';
export { type Family, families, familyTitle } from './definition/family.js';
export type { Rule, RuleFinding } from './definition/rule.js';
export { rules } from './generated/rule-index.js';
export { rulePage } from './pages/rule-page.js';
