import { scenesFor, svgOf } from '@cribwright/drawing';
import * as vscode from 'vscode';
import { readerWords } from '../../session/reader-words.js';
import type { DrawingPanel } from './drawing-panel.js';
import { shownOf } from './show-message.js';

export type PictureFormat = 'svg' | 'png' | 'pdf';
const formats: readonly PictureFormat[] = ['svg', 'png', 'pdf'];

/**
 * Saves what the panel shows. An SVG is made here, by what the command line uses; the panel makes the others and
 * hands them over as base64.
 */
export const saveDrawing = async (
  drawing: DrawingPanel | undefined,
  given: string | undefined,
  made: string | undefined,
): Promise<vscode.Uri | undefined> => {
  const seen = drawing?.seen();
  if (!drawing || !seen) {
    void vscode.window.showInformationMessage(vscode.l10n.t('Open the drawing of a plan first.'));
    return undefined;
  }
  if (seen.outdated !== undefined) {
    void vscode.window.showWarningMessage(
      vscode.l10n.t('The drawing was not saved: it is not of the text as it stands. {0}', seen.outdated),
    );
    return undefined;
  }
  const format = formats.find((f) => f === given) ?? (await pickFormat());
  if (!format) return undefined;
  const { plan, looking, uri, pending } = seen;
  const [scene] = scenesFor(plan.plan, shownOf(plan), looking.choice, pending, readerWords(plan.plan));
  if (!scene) return undefined;
  const bytes =
    format === 'svg'
      ? new TextEncoder().encode(svgOf(scene))
      : Uint8Array.from(atob(made ?? (await drawing.make(format))), (c) => c.charCodeAt(0));
  const target = await vscode.window.showSaveDialog({
    defaultUri: uri.with({ path: uri.path.replace(/(\.crib)?$/, `.${format}`) }),
    filters: { [format.toUpperCase()]: [format] },
  });
  if (!target) return undefined;
  await vscode.workspace.fs.writeFile(target, bytes);
  return target;
};

const pickFormat = async (): Promise<PictureFormat | undefined> => {
  const picked = await vscode.window.showQuickPick([...formats], {
    placeHolder: vscode.l10n.t('Save the drawing as'),
  });
  return formats.find((format) => format === picked);
};
