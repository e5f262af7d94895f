import * as vscode from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';
import { isEdited } from './edited.js';
import type { Lenses } from './lenses.js';
import { proposalScheme } from './proposal-scheme.js';
import { withRulePage } from './with-rule-page.js';

/** How the client speaks to the server, on the desktop and in the browser alike. */
export const clientOptions = (lenses: Lenses, web: boolean): LanguageClientOptions => ({
  documentSelector: [{ language: 'cribwright' }],
  synchronize: { configurationSection: 'cribwright' },
  initializationOptions: { locale: vscode.env.language, web },
  markdown: {
    isTrusted: {
      enabledCommands: ['cribwright.showRule', 'cribwright.openPreview'],
    },
  },
  middleware: {
    // A proposed text is no plan of its own: what it uses does not lie beside it.
    didOpen: async (document, next) => (isProposal(document) ? undefined : next(document)),
    didChange: async (change, next) => (isProposal(change.document) ? undefined : next(change)),
    didClose: async (document, next) => (isProposal(document) ? undefined : next(document)),
    provideCodeLenses: (document, token, next) => lenses.inTime(document, () => next(document, token)),
    handleDiagnostics: (uri, diagnostics, next) =>
      next(uri, isEdited(uri) ? diagnostics.map(withRulePage) : []),
  },
});

const isProposal = ({ uri }: vscode.TextDocument): boolean => uri.scheme === proposalScheme;
