// For the other packages of this project: not promised to anyone else.
export { type Effect, effectOf } from './advice/effect.js';
export { isNearer } from './advice/is-nearer.js';
export { isUnsafe, problemName } from './advice/unsafe-problem.js';
export { applyChanges } from './edits/apply-changes.js';
export { clash } from './edits/clash.js';
export { commonRun } from './edits/common-run.js';
export { moveEdit } from './edits/move-edit.js';
export { type Changes, elementIn, planEditChanges } from './edits/plan-edit-changes.js';
export { textChanges } from './edits/text-changes.js';
export type { ProblemFix } from './workspace/checked.js';
export { fileName, unescaped } from './workspace/files.js';
export { withUnread } from './workspace/unread.js';
export {
  type Checked,
  libraryFolder,
  libraryUri,
  type Pending,
  type Problem,
} from './workspace/workspace.js';
