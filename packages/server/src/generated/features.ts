// Made by build/feature-index.mjs. Do not edit.
import type { Feature } from '../context/feature.js';
import { analysis } from '../features/analysis.js';
import { bundledFiles } from '../features/bundled-files.js';
import { callHierarchy } from '../features/call-hierarchy.js';
import { codeAction } from '../features/code-action.js';
import { codeLens } from '../features/code-lens.js';
import { completion } from '../features/completion/completion.js';
import { definition } from '../features/definition.js';
import { documentHighlight } from '../features/document-highlight.js';
import { documentLink } from '../features/document-link.js';
import { documentSymbol } from '../features/document-symbol.js';
import { edit } from '../features/edit.js';
import { elementAtCursor } from '../features/element-at.js';
import { expectations } from '../features/expectations.js';
import { foldingRange } from '../features/folding-range.js';
import { formatting } from '../features/formatting/formatting.js';
import { onTypeFormatting } from '../features/formatting/on-type-formatting.js';
import { hover } from '../features/hover/hover.js';
import { inlayHint } from '../features/inlay-hint.js';
import { makeSafe } from '../features/make-safe.js';
import { move } from '../features/move.js';
import { references } from '../features/references.js';
import { rename } from '../features/rename.js';
import { rulePage } from '../features/rule-page.js';
import { selectionRange } from '../features/selection-range.js';
import { semanticTokens } from '../features/semantic-tokens.js';
import { signatureHelp } from '../features/signature-help.js';
import { textDocumentContent } from '../features/text-document-content.js';
import { typeDefinition } from '../features/type-definition.js';
import { typeHierarchy } from '../features/type-hierarchy.js';
import { willRenameFiles } from '../features/will-rename-files.js';
import { workspaceSymbol } from '../features/workspace-symbol.js';

/** Every feature that the server has. */
export const features: readonly Feature[] = [
  analysis,
  bundledFiles,
  callHierarchy,
  codeAction,
  codeLens,
  completion,
  definition,
  documentHighlight,
  documentLink,
  documentSymbol,
  edit,
  elementAtCursor,
  expectations,
  foldingRange,
  formatting,
  onTypeFormatting,
  hover,
  inlayHint,
  makeSafe,
  move,
  references,
  rename,
  rulePage,
  selectionRange,
  semanticTokens,
  signatureHelp,
  textDocumentContent,
  typeDefinition,
  typeHierarchy,
  willRenameFiles,
  workspaceSymbol,
];
