import type { PanelWords } from '@cribwright/preview';
import * as vscode from 'vscode';
import { readerWords } from '../../session/reader-words.js';
import { pageOf } from './page.js';

/** Loads the page into a panel, once. All later changes are messages, so the page keeps its state. */
export const loadPage = (webview: vscode.Webview, extension: vscode.Uri, words: PanelWords): void => {
  const folder = vscode.Uri.joinPath(extension, 'packages/preview/dist/panel');
  const part = (name: string): string => webview.asWebviewUri(vscode.Uri.joinPath(folder, name)).toString();
  webview.options = {
    enableScripts: true,
    enableForms: false,
    localResourceRoots: [folder],
  };
  webview.html = pageOf({
    script: part('panel.js'),
    style: part('panel.css'),
    source: webview.cspSource,
    nonce: globalThis.crypto.randomUUID().replaceAll('-', ''),
    title: vscode.l10n.t('Drawing'),
    language: readerWords().locale,
    words,
  });
};
