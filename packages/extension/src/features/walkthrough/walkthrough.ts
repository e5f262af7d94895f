import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';
import { firstPlan } from './first-plan.js';

/** A first plan to start from, for the walkthrough and for a new file. */
export const walkthrough: Feature = ({ context }) => {
  context.subscriptions.push(
    vscode.commands.registerCommand('cribwright.firstPlan', async () => {
      const document = await vscode.workspace.openTextDocument({
        language: 'cribwright',
        content: firstPlan,
      });
      await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    }),
    vscode.commands.registerCommand('cribwright.openWalkthrough', () =>
      vscode.commands.executeCommand(
        'workbench.action.openWalkthrough',
        `${context.extension.id}#first`,
        false,
      ),
    ),
  );
};
