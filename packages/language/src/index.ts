export type { BoundBlock, BoundFile, BoundProperty } from './binding/bound-file.js';
export { library } from './generated/library.js';
export { rulePages } from './generated/rule-pages.js';
export { type Answer, type Exercise, type Lesson, lessonsIn } from './lesson/lesson.js';
export type { LanguageProblem, TextChange, TextFix } from './problems/problem.js';
export { languageCodes } from './problems/words.js';
export * from './protocol/requests.js';
export { positionOf, rangeOf } from './workspace/lines.js';
export * from './workspace/workspace.js';
