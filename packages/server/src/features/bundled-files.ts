import { library } from '@cribwright/language';
import type { Feature } from '../context/feature.js';
import {
  type BundledFileParams,
  type BundledFileReply,
  BundledFileRequest,
  type BundledFilesReply,
  BundledFilesRequest,
} from '../protocol/requests.js';

const root = 'cribwright:/library/';

/** `cribwright/bundledFile`, `cribwright/bundledFiles`: the texts that ship with the tool. */
export const bundledFiles: Feature = {
  serve({ connection }) {
    connection.onRequest(BundledFilesRequest, (): BundledFilesReply => ({ uris: bundledUris() }));
    connection.onRequest(
      BundledFileRequest,
      ({ uri }: BundledFileParams): BundledFileReply => ({ text: bundledText(uri) }),
    );
  },
};

export const bundledUris = (): readonly string[] => Object.keys(library).map((name) => `${root}${name}`);

export function bundledText(uri: string): string | undefined {
  const name = uri.startsWith(root) ? uri.slice(root.length) : undefined;
  return name !== undefined && Object.hasOwn(library, name) ? library[name] : undefined;
}
