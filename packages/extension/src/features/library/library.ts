import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';
import { BundledFiles } from './bundled-files.js';

/** The library and the rule pages that ship with the tool, as files that can be read but not written. */
export const library: Feature = ({ context, server }) => {
  const files = new BundledFiles(server);
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider('cribwright', files, {
      isCaseSensitive: true,
      isReadonly: new vscode.MarkdownString(
        vscode.l10n.t('This ships with Cribwright. Copy what you need into a file of your own to change it.'),
      ),
    }),
    vscode.commands.registerCommand('cribwright.openLibrary', async () => {
      const { uris } = await server.bundledFiles();
      const picked = await vscode.window.showQuickPick(
        uris.map((uri) => ({
          label: uri.slice(uri.lastIndexOf('/') + 1),
          description: uri,
          uri,
        })),
        { placeHolder: vscode.l10n.t('Which part of the library?') },
      );
      if (picked) await vscode.window.showTextDocument(vscode.Uri.parse(picked.uri));
    }),
  );
};
