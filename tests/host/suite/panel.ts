import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands, type Look } from './hands.js';
import { closeAll, example, openExample, paintings, trailer } from './plans.js';
import { until } from './waiting.js';

const truck = 'plans/truck-on-car.crib';

const panels = (): readonly string[] =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof vscode.TabInputWebview)
    .map(({ label }) => label);

const panelCalled = (title: string) =>
  until(`a panel called ${title}`, vscode.window.tabGroups.onDidChangeTabs, () =>
    panels().includes(title) ? true : undefined,
  ).catch((error: Error) => {
    throw new Error(`${error.message} There are: ${panels().join('; ')}`);
  });

describe('the drawing panel', () => {
  afterEach(closeAll);

  it('follows the editor', async () => {
    await openExample(trailer);
    await vscode.commands.executeCommand('cribwright.openPreview');
    await panelCalled('Drawing of trailer-on-car.crib');
    const drawings = await paintings();
    const { document } = await openExample(truck);
    await panelCalled('Drawing of truck-on-car.crib');
    await drawings.of(document);
    assert.lengthOf(panels(), 1);
  });

  it('stays with its file when it is locked, and another one follows', async () => {
    await openExample(trailer);
    await vscode.commands.executeCommand('cribwright.openPreview');
    await vscode.commands.executeCommand('cribwright.lockPreview');
    await panelCalled('Drawing of trailer-on-car.crib, locked');
    await openExample(truck);
    assert.deepEqual(panels(), ['Drawing of trailer-on-car.crib, locked']);
    await vscode.commands.executeCommand('cribwright.openPreview');
    await panelCalled('Drawing of truck-on-car.crib');
    assert.lengthOf(panels(), 2);
  });

  it('opens the drawing of a support from the line above it', async () => {
    const { document } = await openExample(trailer);
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview', document.uri.toString(), 'crib/B');
    await drawings.of(document);
    await hands('lit', { element: 'crib/B' });
  });

  it('loads nothing from outside and runs no script but its own', async () => {
    await openExample(trailer);
    await vscode.commands.executeCommand('cribwright.openPreview');
    const policy = await hands<string>('policy');
    assert.match(policy, /default-src 'none'/);
    assert.notMatch(policy, /unsafe-inline|unsafe-eval/);
    assert.match(policy, /script-src [^;]*'nonce-/);
  });

  it('shows a plan from the library as it shows any other', async () => {
    const { document } = await openExample('plans/trailer-on-car-faulty.crib');
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await drawings.of(document);
    const { text } = await hands<Look>('look');
    assert.match(text, /danger|unsafe/i);
  });

  it('puts what it shows on the clipboard as a picture', async () => {
    const { document } = await openExample(trailer);
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await drawings.of(document);
    await hands('allowClipboard');
    await hands('click', { selector: '.more summary' });
    await hands('click', { selector: 'button[aria-label="Copy as a picture"]' });
    await hands('shows', { selector: '[role=status]:has-text("The drawing is on the clipboard")' });
    const picture = await hands<{ width: number; height: number }>('clipboardPicture');
    // A sheet is 250 mm wide, a picture has 200 dots an inch.
    assert.equal(picture.width, Math.round((250 / 25.4) * 200));
    assert.isAbove(picture.height, 1000);
  });

  for (const [format, starts] of [
    ['svg', '<svg'],
    ['png', '\u0089PNG'],
    ['pdf', '%PDF-'],
  ] as const) {
    it(`saves what it shows as ${format.toUpperCase()}`, async () => {
      const { document } = await openExample(trailer);
      const drawings = await paintings();
      await vscode.commands.executeCommand('cribwright.openPreview');
      await drawings.of(document);
      const saved = vscode.commands.executeCommand<vscode.Uri | undefined>('cribwright.saveDrawing', format);
      await hands('accept');
      const uri = await saved;
      assert.equal(uri?.path, example(`plans/trailer-on-car.${format}`).path);
      if (!uri) return;
      const bytes = await vscode.workspace.fs.readFile(uri);
      assert.equal(String.fromCharCode(...bytes.slice(0, starts.length)), starts);
      if (format === 'svg') assert.match(new TextDecoder().decode(bytes), /planning and teaching aid/);
      await vscode.workspace.fs.delete(uri);
    });
  }
});
