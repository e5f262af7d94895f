import * as vscode from 'vscode';
import type { LanguageClientOptions } from 'vscode-languageclient';
import { withRulePage } from './with-rule-page.js';

/** How the client speaks to the server, on the desktop and in the browser alike. */
export const clientOptions = (web: boolean): LanguageClientOptions => ({
  documentSelector: [{ language: 'cribwright' }],
  synchronize: { configurationSection: 'cribwright' },
  initializationOptions: { locale: vscode.env.language, web },
  markdown: {
    isTrusted: {
      enabledCommands: ['cribwright.showRule', 'cribwright.openPreview'],
    },
  },
  middleware: {
    handleDiagnostics: (uri, diagnostics, next) => next(uri, diagnostics.map(withRulePage)),
  },
});
