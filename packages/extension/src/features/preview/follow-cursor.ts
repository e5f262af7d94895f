import * as vscode from 'vscode';
import type { Server } from '../../session/server.js';
import type { DrawingPanel } from './drawing-panel.js';

/** Lights the shape of what the cursor stands in, whether mouse or keys moved it. */
export const followCursor = (server: Server, panels: () => Iterable<DrawingPanel>): vscode.Disposable => {
  let asked = 0;
  return vscode.window.onDidChangeTextEditorSelection(async ({ textEditor }) => {
    const { document, selection } = textEditor;
    const uri = document.uri.toString();
    const showing = [...panels()].filter(({ shows }) => shows === uri);
    if (showing.length === 0) return;
    const question = ++asked;
    const offset = document.offsetAt(selection.active);
    const { ref } = await server.elementAt({ uri, offset }).catch(() => ({ ref: undefined }));
    if (question !== asked) return;
    for (const drawing of showing) drawing.light(ref?.element);
  });
};
