import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands, type Look } from './hands.js';
import { closeAll, openExample, paintings, retype, trailer } from './plans.js';
import { codeOf, findings } from './waiting.js';

const high = (found: readonly vscode.Diagnostic[]) => found.find((d) => codeOf(d) === 'crib-height');

describe('a plan that is typed', () => {
  after(closeAll);

  it('is underlined where a crib stands too high, put right by the fix, and drawn again each time', async () => {
    const editor = await openExample(trailer);
    const { document } = editor;
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    const before = await drawings.of(document);
    assert.isUndefined(high(vscode.languages.getDiagnostics(document.uri)));

    await retype(editor, /courses +11/, 'courses 14');
    const found = high(await findings(document.uri, 'crib-height', (all) => high(all) !== undefined));
    assert.equal(found?.severity, vscode.DiagnosticSeverity.Error);
    assert.match(found?.message ?? '', /49 in/);
    assert.match(document.getText(found?.range), /14/);
    const broken = await drawings.of(document);
    assert.notEqual(broken.words, before.words);
    assert.match((await hands<Look>('look')).text, /49/);

    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      found?.range,
      vscode.CodeActionKind.QuickFix.value,
    );
    const fix = actions.find(({ title, edit }) => /course/i.test(title) && edit !== undefined);
    assert.isDefined(fix, `Offered: ${actions.map(({ title }) => title).join('; ')}`);
    if (fix?.edit) assert.isTrue(await vscode.workspace.applyEdit(fix.edit));
    await findings(document.uri, 'no crib-height', (all) => high(all) === undefined);
    const fixed = await drawings.of(document);
    assert.notEqual(fixed.words, broken.words);
    // It reaches as well: of those that stand, the one that is preferred brings nothing new.
    assert.match(document.getText(), /courses +11/);
  });

  it('keeps the last good drawing while the text has an error, and says so', async () => {
    const editor = await openExample(trailer);
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    const good = await hands<Look>('look');
    assert.isUndefined(good.notice?.trim() || undefined);
    await retype(editor, /layout +2 by 2/, 'layout 2 by');
    await drawings.of(editor.document);
    const look = await hands<Look>('look');
    assert.match(look.notice ?? '', /last drawing/);
    assert.isAbove(look.elements.length, 0);
    assert.deepEqual([...look.elements].sort(), [...good.elements].sort());
  });

  it('shows the caution at all times', async () => {
    assert.match((await hands<Look>('look')).caution ?? '', /planning and teaching aid/i);
  });
});
