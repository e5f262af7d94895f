export { lensesOf } from './features/code-lens.js';
export { rulePageText } from './features/rule-page-text.js';
export { type FolderEntry, type Folders, type PlanFiles, planFilesIn } from './files/plan-files.js';
export {
  AnalysisChanged,
  type AnalysisChangedParams,
  type AnalysisParams,
  AnalysisRequest,
  type BundledFileParams,
  type BundledFileReply,
  BundledFileRequest,
  type BundledFilesReply,
  BundledFilesRequest,
  type EditParams,
  type EditReply,
  EditRequest,
  type ElementAtParams,
  type ElementAtReply,
  ElementAtRequest,
  type ExpectationsReply,
  ExpectationsRequest,
  LayoutDrawn,
  type ListFolderParams,
  type ListFolderReply,
  ListFolderRequest,
  MoveRequest,
  type ReadFileParams,
  type ReadFileReply,
  ReadFileRequest,
  type RulePageParams,
  type RulePageReply,
  RulePageRequest,
} from './protocol/requests.js';
export { diskFolders } from './session/disk-folders.js';
export { decodePlan, mostBytes, readPlanFile } from './session/plan-file.js';
