import type {
  ListFolderParams,
  ListFolderReply,
  ReadFileParams,
  ReadFileReply,
} from '@cribwright/server/protocol';
import { ListFolderRequest, ReadFileRequest } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { entriesOf } from './entries-of.js';

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
      try {
        const entries = await entriesOf(vscode.Uri.parse(uri));
        return { entries: entries.map(({ address, kind }) => ({ uri: address, kind })) };
      } catch {
        return { entries: [] };
      }
    }),
  );
