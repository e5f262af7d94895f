import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands } from './hands.js';
import { closeAll, openExample, paintings, trailer } from './plans.js';
import { until } from './waiting.js';

const crib = '[data-element="crib/A"]';

/** The drawing of the trailer, freshly opened. */
const drawn = async () => {
  const editor = await openExample(trailer);
  const drawings = await paintings();
  await vscode.commands.executeCommand('cribwright.openPreview');
  await drawings.of(editor.document);
  return { editor, document: editor.document, drawings };
};

describe('mouse and keys in the drawing', () => {
  afterEach(closeAll);

  it('goes to the line of the crib that is clicked', async () => {
    const { document } = await drawn();
    const line = document.positionAt(document.getText().indexOf('crib A')).line;
    const went = until('the cursor at crib A', vscode.window.onDidChangeTextEditorSelection, () =>
      vscode.window.visibleTextEditors.some(
        (e) => e.document === document && e.selection.active.line === line,
      )
        ? true
        : undefined,
    );
    await hands('click', { selector: crib });
    await went;
  });

  it('lights the shape that the cursor stands in', async () => {
    const { editor, document } = await drawn();
    const place = document.positionAt(document.getText().indexOf('crib B') + 5);
    editor.selection = new vscode.Selection(place, place);
    await hands('lit', { element: 'crib/B' });
  });

  it('moves a crib that is dragged, as one step of undo', async () => {
    const { document, drawings } = await drawn();
    const before = document.getText();
    const changed = until('the text to change', vscode.workspace.onDidChangeTextDocument, () =>
      document.getText() === before ? undefined : true,
    );
    await hands('drag', { selector: crib, right: 30, down: 0 });
    await changed;
    const after = document.getText();
    const lines = (text: string) => text.split('\n');
    const differing = lines(after).filter((line, i) => line !== lines(before)[i]);
    assert.lengthOf(differing, 1);
    assert.match(differing[0] ?? '', /^ +at +/);
    assert.match(differing[0] ?? '', /ft/);
    await drawings.of(document);

    await vscode.commands.executeCommand('cribwright.undoInText');
    assert.equal(document.getText(), before);
  });

  it('steps through the building by keys', async () => {
    const { document, drawings } = await drawn();
    const finished = await drawings.of(document);
    await hands('focus', { selector: crib });
    await hands('press', { keys: ',' });
    const stage = await drawings.of(document, ({ words }) => words !== finished.words);
    await hands('focus', { selector: 'svg [data-element]' });
    await hands('press', { keys: '.' });
    await drawings.of(document, ({ words }) => words !== stage.words);
  });

  it('adds a course to the crib in focus, and takes it back', async () => {
    const { document, drawings } = await drawn();
    const before = document.getText();
    const changed = (from: string) =>
      until('the text to change', vscode.workspace.onDidChangeTextDocument, () =>
        document.getText() === from ? undefined : document.getText(),
      );
    await hands('focus', { selector: crib });
    const more = changed(before);
    await hands('press', { keys: 'Alt+ArrowUp' });
    const after = await more;
    assert.match(after, /courses +12/);
    await drawings.of(document);
    await hands('focus', { selector: crib });
    const less = changed(after);
    await hands('press', { keys: 'Control+z' });
    assert.equal(await less, before);
  });

  it('shows what moves when a support gives way', async () => {
    const { document, drawings } = await drawn();
    const whole = await drawings.of(document);
    await hands('choose', { label: 'What if', index: 1 });
    const lost = await drawings.of(document, ({ words }) => words !== whole.words);
    assert.match(lost.words, /gives way|lost|fails/i);
  });

  it('takes no serious complaint from axe', async () => {
    await drawn();
    assert.deepEqual(await hands<string[]>('axe'), []);
  });

  for (const [name, theme] of [
    ['light', 'Default Light Modern'],
    ['dark', 'Default Dark Modern'],
    ['high-contrast', 'Default High Contrast'],
    ['high-contrast-light', 'Default High Contrast Light'],
  ] as const) {
    it(`follows the ${name} theme`, async () => {
      const { document, drawings } = await drawn();
      const settings = vscode.workspace.getConfiguration('workbench');
      await settings.update('colorTheme', theme, vscode.ConfigurationTarget.Global);
      await drawings.of(document);
      const kind = await hands<string>('theme', { kind: name });
      assert.equal(kind, `vscode-${name}`);
      await hands('screenshot', { name: `editor-${name}` });
    });
  }
});
