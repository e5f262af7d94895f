import type { Connection } from 'vscode-languageserver';
import { type Folders, planFilesIn } from '../files/plan-files.js';
import {
  type ListFolderParams,
  type ListFolderReply,
  ListFolderRequest,
  type ReadFileParams,
  type ReadFileReply,
  ReadFileRequest,
} from '../protocol/requests.js';
import type { Files } from './files.js';

/** Files that only the client can reach: in a browser, or on a virtual file system. */
export function askedFiles(connection: Connection): Files {
  const ask = async <P, R>(method: string, params: P): Promise<R | undefined> => {
    try {
      return await connection.sendRequest<R>(method, params);
    } catch {
      // A client without this request, or one that could not read: no such file, which the plan then says.
      return undefined;
    }
  };
  const folders: Folders = {
    list: async (uri) =>
      ((await ask<ListFolderParams, ListFolderReply>(ListFolderRequest, { uri }))?.entries ?? []).map(
        (entry) => ({
          name: entry.uri.slice(entry.uri.lastIndexOf('/') + 1),
          address: entry.uri,
          kind: entry.kind,
        }),
      ),
    // The client says of a link what it leads to.
    follow: async () => 'other',
  };
  return {
    read: async (uri) => (await ask<ReadFileParams, ReadFileReply>(ReadFileRequest, { uri }))?.text,
    list: async (folder, limit) => (await planFilesIn(folder, folders, limit)).files,
  };
}
