import type { DocumentLink } from 'vscode-languageserver';
import type { BoundFile } from '../binding/bound-file.js';
import type { Feature } from './feature.js';
import { rangeOf } from './positions.js';

/** `textDocument/documentLink`: the path in a `use` line opens the file. */
export const documentLink: Feature = {
  offers: () => ({ documentLinkProvider: {} }),
  serve({ connection, file }) {
    connection.onDocumentLinks(async ({ textDocument }) => {
      const found = await file(textDocument.uri);
      return found ? linksOf(found) : null;
    });
  },
};

export const linksOf = (file: BoundFile): DocumentLink[] =>
  file.uses.flatMap(({ pathSpan, target }) =>
    target === undefined ? [] : [{ range: rangeOf(file, pathSpan), target }],
  );
