import * as vscode from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';
import { isEdited } from './edited.js';
import type { Lenses } from './lenses.js';
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
    provideCodeLenses: (document, token, next) => lenses.inTime(document, () => next(document, token)),
    handleDiagnostics: (uri, diagnostics, next) =>
      next(uri, isEdited(uri) ? diagnostics.map(withRulePage) : []),
  },
});
