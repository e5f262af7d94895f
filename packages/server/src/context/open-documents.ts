import type { DidChangeTextDocumentParams, DidOpenTextDocumentParams } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { URI } from 'vscode-uri';

/** One spelling for one file: clients differ in how they escape a drive letter or a space. */
export const sameUri = (uri: string): string => URI.parse(uri).toString();

export interface OpenDocument {
  /** As the client spells it: replies use its spelling. */
  readonly uri: string;
  readonly text: TextDocument;
}

/** The texts that are open in the editor. Applies edits; parses nothing. */
export interface OpenDocuments {
  open(params: DidOpenTextDocumentParams): OpenDocument;
  /** `undefined` for a file that was never opened: an unruly client is not followed. */
  change(params: DidChangeTextDocumentParams): OpenDocument | undefined;
  close(uri: string): OpenDocument | undefined;
  get(uri: string): OpenDocument | undefined;
  all(): readonly OpenDocument[];
}

export function openDocuments(): OpenDocuments {
  const open = new Map<string, OpenDocument>();
  return {
    open({ textDocument: { uri, languageId, version, text } }) {
      const document = { uri, text: TextDocument.create(uri, languageId, version, text) };
      open.set(sameUri(uri), document);
      return document;
    },
    change({ textDocument: { uri, version }, contentChanges }) {
      const document = open.get(sameUri(uri));
      if (document) TextDocument.update(document.text, [...contentChanges], version);
      return document;
    },
    close(uri) {
      const document = open.get(sameUri(uri));
      open.delete(sameUri(uri));
      return document;
    },
    get: (uri) => open.get(sameUri(uri)),
    all: () => [...open.values()],
  };
}
