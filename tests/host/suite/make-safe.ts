import { assert } from 'chai';
import * as vscode from 'vscode';
import { closeAll, openExample, paintings, retype } from './plans.js';
import { until } from './waiting.js';

const faulty = 'plans/air-sprung-cab-faulty.crib';

interface Found {
  readonly summary: string;
  readonly steps: readonly { readonly title: string; readonly rule: string }[];
  readonly proposal?: string;
}

const lookFor = (document: vscode.TextDocument): Thenable<Found> =>
  vscode.commands.executeCommand<Found>('cribwright.makeSafe', document.uri);

const diffs = (): readonly vscode.Tab[] =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof vscode.TabInputTextDiff);

describe('Make This Plan Safe', () => {
  afterEach(closeAll);

  it('shows the changes and what they come to, and makes them on request, as one step of undo', async () => {
    const { document } = await openExample(faulty);
    const before = document.getText();
    const drawings = await paintings();
    const found = await lookFor(document);
    assert.deepEqual(
      found.steps.map(({ rule }) => rule),
      ['crib-reach on crib A', 'wheels-unchocked on the tractor'],
    );
    assert.match(found.summary, /nothing unsafe/);

    // Nothing is changed yet: the text is compared with what is proposed, and that is drawn.
    assert.equal(document.getText(), before);
    const proposal = vscode.Uri.parse(found.proposal ?? '');
    assert.equal(diffs().length, 1);
    const proposed = (await vscode.workspace.openTextDocument(proposal)).getText();
    assert.match(proposed, /courses +5/);
    assert.match(proposed, /chock +tractor both directions/);
    assert.isFalse((await drawings.at(proposal)).unchecked);
    assert.deepEqual(vscode.languages.getDiagnostics(proposal), []);

    assert.isTrue(await vscode.commands.executeCommand('cribwright.applyProposal', proposal));
    assert.equal(document.getText(), proposed);
    assert.deepEqual(diffs(), []);

    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand('undo');
    await until('the text as it was', vscode.workspace.onDidChangeTextDocument, () =>
      document.getText() === before ? true : undefined,
    );
  });

  it('makes no change that was proposed for an older text', async () => {
    const editor = await openExample(faulty);
    const found = await lookFor(editor.document);
    await retype(await vscode.window.showTextDocument(editor.document), /courses +3/, 'courses 4');
    const text = editor.document.getText();
    assert.isFalse(
      await vscode.commands.executeCommand(
        'cribwright.applyProposal',
        vscode.Uri.parse(found.proposal ?? ''),
      ),
    );
    assert.equal(editor.document.getText(), text);
  });

  it('is offered on the name of the plan', async () => {
    const { document } = await openExample(faulty);
    const name = document.positionAt(document.getText().indexOf('plan "') + 1);
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      'vscode.executeCodeActionProvider',
      document.uri,
      new vscode.Range(name, name),
    );
    const offered = actions.find(({ command }) => command?.command === 'cribwright.makeSafe');
    assert.isDefined(offered, `Offered: ${actions.map(({ title }) => title).join('; ')}`);
  });
});
