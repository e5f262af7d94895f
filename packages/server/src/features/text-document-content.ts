import { unescaped } from '@cribwright/workspace/internal';
import type { Feature } from '../context/feature.js';
import type { Locale } from '../l10n/say.js';
import { bundledText } from './bundled-files.js';
import { rulePageText } from './rule-page-text.js';

/** `workspace/textDocumentContent`: the bundled library and the rules' pages, read-only, without a network. */
export const textDocumentContent: Feature = {
  offers: () => ({ workspace: { textDocumentContent: { schemes: ['cribwright'] } } }),
  serve(session) {
    session.connection.workspace.textDocumentContent.on(({ uri }) => ({
      text: contentOf(uri, session.locale) ?? '',
    }));
  },
};

function contentOf(uri: string, locale: Locale): string | undefined {
  const page = /^cribwright:\/rules\/(.+)\.md$/.exec(uri)?.[1];
  return page === undefined ? bundledText(uri) : rulePageText(unescaped(page), locale);
}
