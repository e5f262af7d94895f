import type { BoundBlock, BoundFile } from '@cribwright/language';
import type { DocumentLink } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { rangeOf } from '../context/positions.js';
import { rulePage } from './publish-diagnostics.js';

/** `textDocument/documentLink`: the path in a `use` line opens the file, the name of a rule its page. */
export const documentLink: Feature = {
  offers: () => ({ documentLinkProvider: {} }),
  serve({ connection, file }) {
    connection.onDocumentLinks(async ({ textDocument }) => {
      const found = await file(textDocument.uri);
      return found ? linksOf(found) : null;
    });
  },
};

export const linksOf = (file: BoundFile): DocumentLink[] => [
  ...file.uses.flatMap(({ pathSpan, target }) =>
    target === undefined ? [] : [{ range: rangeOf(file, pathSpan), target }],
  ),
  ...file.blocks.flatMap((block) => ruleLinks(file, block)),
];

/** Rules that `expect` and `accept` lines name. */
const ruleLinks = (file: BoundFile, block: BoundBlock): DocumentLink[] => [
  ...block.properties.flatMap(({ match }) =>
    (match?.pieces ?? [])
      .filter((p) => p.kind === 'rule')
      .map(({ span }) => ({
        range: rangeOf(file, span),
        target: rulePage(file.text.slice(span.start, span.end)),
      })),
  ),
  ...block.blocks.flatMap((inner) => ruleLinks(file, inner)),
];
