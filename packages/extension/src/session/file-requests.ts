import type {
  ListFolderParams,
  ListFolderReply,
  ReadFileParams,
  ReadFileReply,
} from '@cribwright/server/protocol';
import { ListFolderRequest, ReadFileRequest } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** Reads files for a server in a worker, which has none of its own. A file that cannot be read is `undefined`. */
export const answerFileRequests = (client: BaseLanguageClient): vscode.Disposable =>
  vscode.Disposable.from(
    client.onRequest(ReadFileRequest, async ({ uri }: ReadFileParams): Promise<ReadFileReply> => {
      try {
        return {
          text: new TextDecoder().decode(await vscode.workspace.fs.readFile(vscode.Uri.parse(uri))),
        };
      } catch {
        return { text: undefined };
      }
    }),
    client.onRequest(ListFolderRequest, async ({ uri }: ListFolderParams): Promise<ListFolderReply> => {
      const folder = vscode.Uri.parse(uri);
      try {
        const entries = await vscode.workspace.fs.readDirectory(folder);
        return {
          entries: entries.map(([name, type]) => ({
            uri: vscode.Uri.joinPath(folder, name).toString(),
            kind: type & vscode.FileType.Directory ? 'folder' : 'file',
          })),
        };
      } catch {
        return { entries: [] };
      }
    }),
  );
