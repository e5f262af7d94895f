import {
  type CodeAction,
  type CodeActionContext,
  CodeActionKind,
  CodeActionTriggerKind,
  type Diagnostic,
  type Range,
} from 'vscode-languageserver';
import type { BoundFile } from '../binding/bound-file.js';
import { say as translate } from '../l10n/say.js';
import type { TextChange } from '../problems/problem.js';
import type { Checked, Problem } from '../workspace/workspace.js';
import type { Desk } from './desk.js';
import type { Feature } from './feature.js';
import { otherBuildKind, otherBuilds } from './other-builds.js';
import { offsetAt, spanOf } from './positions.js';
import { diagnosticOf } from './publish-diagnostics.js';
import { say } from './words.js';
import { workspaceEdit } from './workspace-edit.js';

export const fixAllKind = `${CodeActionKind.SourceFixAll}.cribwright`;

/** `textDocument/codeAction`: fixes for one finding, and one action for all that have a single safe answer. */
export const codeAction: Feature = {
  offers: () => ({
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, fixAllKind, otherBuildKind] },
  }),
  serve(session) {
    session.connection.onCodeAction(async ({ textDocument, range, context }, token) => {
      const file = await session.file(textDocument.uri);
      const checked = file && (await session.checked(textDocument.uri, token));
      if (!file || !checked) return null;
      const wanted = (kind: string): boolean =>
        !context.only || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
      return [
        ...(wanted(CodeActionKind.QuickFix) ? quickFixes(session, file, checked, range) : []),
        ...(wanted(fixAllKind) ? fixAll(session, file, checked) : []),
        // A search: made when someone asks, not at every step of the cursor.
        ...(wanted(otherBuildKind) && asked(context)
          ? otherBuilds(session, file, checked, offsetAt(file, range.start))
          : []),
      ];
    });
  },
};

const asked = ({ only, triggerKind }: CodeActionContext): boolean =>
  only !== undefined || triggerKind === CodeActionTriggerKind.Invoked;

/** Worked out from the file itself, not from what the client sends: on save it sends nothing. */
export function quickFixes(desk: Desk, file: BoundFile, checked: Checked, range: Range): CodeAction[] {
  const { start, end } = spanOf(file, range);
  return checked.problems
    .filter(({ span }) => span.start <= end && start <= span.end)
    .flatMap((problem) => fixesOf(desk, file, problem));
}

function fixesOf(desk: Desk, file: BoundFile, problem: Problem): CodeAction[] {
  const diagnostics: Diagnostic[] = [diagnosticOf(desk, file, problem)];
  return problem.fixes.map(({ title, edits }, i) => ({
    title: translate(title, desk.locale),
    kind: CodeActionKind.QuickFix,
    diagnostics,
    edit: workspaceEdit(desk, edits),
    ...(i === 0 && problem.fixes.length === 1 ? { isPreferred: true } : {}),
  }));
}

/** The first safe fix of each problem, as far as they do not touch one another. */
export function fixAll(desk: Desk, file: BoundFile, checked: Checked): CodeAction[] {
  const changes: TextChange[] = [];
  for (const { fixes } of checked.problems) {
    const edits = fixes.find((f) => f.safe)?.edits;
    if (!edits || Object.keys(edits).some((uri) => uri !== file.uri)) continue;
    const own = edits[file.uri] ?? [];
    if (own.some((a) => changes.some((b) => clash(a, b)))) continue;
    changes.push(...own);
  }
  if (changes.length === 0) return [];
  return [
    {
      title: translate(say('fixAll', {}), desk.locale),
      kind: fixAllKind,
      edit: workspaceEdit(desk, { [file.uri]: changes }),
    },
  ];
}

/** Two that overlap, or put something in at one place. Deleting neighbouring lines is no clash. */
const clash = ({ span: a }: TextChange, { span: b }: TextChange): boolean =>
  (a.start < b.end && b.start < a.end) || a.start === b.start;
