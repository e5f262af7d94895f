export type { Effect } from './advice/effect.js';
export { makeSafe, type SafetyPlan, type SafetyStep } from './advice/make-safe.js';
export { compareVersions } from './compare/compare-versions.js';
export type {
  BlockChange,
  Comparison,
  FigureChange,
  FindingChange,
  LimitChange,
  LineChange,
  PlanChange,
  PlanState,
  StockChange,
  Version,
  VersionFile,
} from './compare/comparison.js';
export type { MoveParams } from './edits/move-edit.js';
export type { Answer } from './lesson/answer.js';
export { type Exercise, type Lesson, lessonsIn } from './lesson/lesson.js';
export type { AnalysisReply, PlanReply } from './reply/plan-reply.js';
export { type CheckTextOptions, checkText } from './workspace/check-text.js';
export type { Checked, Pending, Problem } from './workspace/checked.js';
export {
  type FileSource,
  type FileText,
  libraryFolder,
  libraryText,
  libraryUri,
  type Unreadable,
} from './workspace/files.js';
export { positionOf, rangeOf } from './workspace/lines.js';
export { openWorkspace } from './workspace/open-workspace.js';
export { today } from './workspace/today.js';
export { deepestUse, mostFiles } from './workspace/uses.js';
export type { Workspace, WorkspaceOptions } from './workspace/workspace.js';
