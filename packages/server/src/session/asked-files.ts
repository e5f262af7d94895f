import type { Connection } from 'vscode-languageserver';
import {
  type ListFolderParams,
  type ListFolderReply,
  ListFolderRequest,
  type ReadFileParams,
  type ReadFileReply,
  ReadFileRequest,
} from '../protocol/requests.js';
import { type Files, isPlanFile, passedOver } from './files.js';

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
  const entries = async (uri: string) =>
    (await ask<ListFolderParams, ListFolderReply>(ListFolderRequest, { uri }))?.entries ?? [];

  return {
    read: async (uri) => (await ask<ReadFileParams, ReadFileReply>(ReadFileRequest, { uri }))?.text,
    async list(folder, limit) {
      const found: string[] = [];
      const folders = [folder];
      const seen = new Set(folders);
      for (let next = folders.shift(); next !== undefined && found.length < limit; next = folders.shift()) {
        for (const { uri, kind } of await entries(next)) {
          const name = uri.slice(uri.lastIndexOf('/') + 1);
          if (kind === 'file' && isPlanFile(name) && found.length < limit) found.push(uri);
          if (kind === 'folder' && !passedOver(name) && !seen.has(uri)) {
            seen.add(uri);
            folders.push(uri);
          }
        }
      }
      return found;
    },
  };
}
