import { pdfOf, scenesFor, svgOf } from '@cribwright/drawing';
import * as vscode from 'vscode';
import type { DrawingPanel } from './drawing-panel.js';

const formats = ['svg', 'png', 'pdf'] as const;
type Format = (typeof formats)[number];

/**
 * Saves what the panel shows. SVG and PDF are made here, by what the command line uses; a PNG is painted by the
 * panel and handed over as base64.
 */
export const saveDrawing = async (
  drawing: DrawingPanel | undefined,
  given: string | undefined,
  data: string | undefined,
): Promise<vscode.Uri | undefined> => {
  const seen = drawing?.seen();
  if (!seen) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Open the drawing of a plan first.'));
    return undefined;
  }
  const format = formats.find((f) => f === given) ?? (await pickFormat(data !== undefined));
  if (!format) return undefined;
  const bytes = await bytesOf(format, seen, data);
  if (!bytes) return undefined;
  const target = await vscode.window.showSaveDialog({
    defaultUri: seen.uri.with({
      path: seen.uri.path.replace(/(\.crib)?$/, `.${format}`),
    }),
    filters: { [format.toUpperCase()]: [format] },
  });
  if (!target) return undefined;
  await vscode.workspace.fs.writeFile(target, bytes);
  return target;
};

const pickFormat = (painted: boolean): Thenable<Format | undefined> =>
  vscode.window.showQuickPick(
    formats.filter((f) => f !== 'png' || painted),
    { placeHolder: vscode.l10n.t('Save the drawing as') },
  ) as Thenable<Format | undefined>;

const bytesOf = async (
  format: Format,
  { plan, looking }: NonNullable<ReturnType<DrawingPanel['seen']>>,
  data: string | undefined,
): Promise<Uint8Array | undefined> => {
  const scenes = scenesFor(plan.plan, plan.analysis, looking.choice);
  switch (format) {
    case 'svg':
      return scenes[0] && new TextEncoder().encode(svgOf(scenes[0]));
    case 'pdf':
      return pdfOf(scenes, { title: plan.plan.title });
    case 'png':
      return data === undefined ? undefined : Uint8Array.from(atob(data), (c) => c.charCodeAt(0));
  }
};
