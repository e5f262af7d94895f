import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';

/** The command line as a task: its findings land in the Problems view. Needs a process, so not in a browser. */
export const tasks: Feature = ({ context, web }) => {
  if (web) return;
  const program = vscode.Uri.joinPath(context.extensionUri, 'packages/cli/dist/cribwright.cjs').fsPath;

  const check = (
    scope: vscode.WorkspaceFolder,
    definition: vscode.TaskDefinition = { type: 'cribwright', path: '.' },
  ): vscode.Task => {
    const path = typeof definition.path === 'string' ? definition.path : '.';
    // The editor's own runtime runs it, so that no Node has to be installed.
    const execution = new vscode.ProcessExecution(process.execPath, [program, 'check', path], {
      cwd: scope.uri.fsPath,
      env: { ELECTRON_RUN_AS_NODE: '1', NO_COLOR: '1' },
    });
    const task = new vscode.Task(
      definition,
      scope,
      path === '.' ? vscode.l10n.t('check all plans') : vscode.l10n.t('check {0}', path),
      'cribwright',
      execution,
      ['$cribwright-danger', '$cribwright-warning', '$cribwright-note'],
    );
    task.group = vscode.TaskGroup.Test;
    return task;
  };

  context.subscriptions.push(
    vscode.tasks.registerTaskProvider('cribwright', {
      provideTasks: () => (vscode.workspace.workspaceFolders ?? []).map((folder) => check(folder)),
      resolveTask: (task) => {
        const [first] = vscode.workspace.workspaceFolders ?? [];
        const scope = typeof task.scope === 'object' ? task.scope : first;
        return scope ? check(scope, task.definition) : undefined;
      },
    }),
  );
};
