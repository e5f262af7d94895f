import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';

/** Starts the checks afresh, and shows what the server wrote down, for when something is stuck. */
export const restart: Feature = ({ context, client }) => {
  context.subscriptions.push(
    vscode.commands.registerCommand('cribwright.restart', async () => {
      // One that ended by itself cannot be stopped any more.
      if (client.needsStop()) await client.stop();
      await client.start();
    }),
    vscode.commands.registerCommand('cribwright.showLog', () => client.outputChannel.show()),
  );
};
