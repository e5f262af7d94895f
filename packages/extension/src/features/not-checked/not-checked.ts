import * as vscode from 'vscode';
import { isEdited } from '../../session/edited.js';
import type { Feature } from '../../session/session.js';

/**
 * A problem in each open plan while nothing checks it. The editor drops the findings of a server that is gone, and a
 * file without problems looks like one without faults.
 */
export const notChecked: Feature = ({ context, verdicts }) => {
  const problems = vscode.languages.createDiagnosticCollection('cribwright not checked');
  const show = (): void => {
    problems.clear();
    if (!verdicts.stopped) return;
    for (const document of vscode.workspace.textDocuments) {
      if (document.languageId !== 'cribwright' || !isEdited(document.uri)) continue;
      const problem = new vscode.Diagnostic(document.lineAt(0).range, verdicts.why());
      problem.source = 'cribwright';
      problem.code = 'not-checked';
      problems.set(document.uri, [problem]);
    }
  };
  context.subscriptions.push(
    problems,
    verdicts.onDidChangeServer(show),
    vscode.workspace.onDidOpenTextDocument(show),
    vscode.workspace.onDidCloseTextDocument(show),
  );
};
