import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands } from './hands.js';
import { closeAll, openExample, trailer } from './plans.js';
import { findings, until } from './waiting.js';

/** A place in the text, in the middle of the word that the pattern's first group finds. */
const at = (document: vscode.TextDocument, pattern: RegExp): vscode.Position => {
  const found = pattern.exec(document.getText());
  if (!found?.[1]) throw new Error(`${pattern} is not there`);
  return document.positionAt(found.index + found[0].indexOf(found[1]) + 1);
};

describe('the editor', () => {
  after(closeAll);

  it('has a handler for every command', async () => {
    const known = new Set(await vscode.commands.getCommands(true));
    const { contributes } = vscode.extensions.getExtension('cribwright.cribwright')?.packageJSON ?? {};
    const asked: string[] = contributes.commands.map(({ command }: { command: string }) => command);
    assert.isAbove(asked.length, 5);
    assert.deepEqual(
      asked.filter((command) => !known.has(command)),
      [],
    );
  });

  it('says the figure with its sum where the pointer rests', async () => {
    const { document } = await openExample(trailer);
    await findings(document.uri, 'the first answer', () => true);
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      document.uri,
      at(document, /(courses) +11/),
    );
    const text = hovers
      .flatMap(({ contents }) => contents.map((c) => (typeof c === 'string' ? c : c.value)))
      .join('\n')
      .replaceAll('\\', '');
    assert.match(text, /11 × 3\.5 in/);
    assert.match(text, /38\.5 in/);
  });

  it('goes to the definition in the library, which can be read but not written', async () => {
    const { document } = await openExample(trailer);
    const found = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
      'vscode.executeDefinitionProvider',
      document.uri,
      at(document, /trailer : (VanTrailer53)/),
    );
    const [first] = found;
    assert.isDefined(first);
    const uri = first && ('targetUri' in first ? first.targetUri : first.uri);
    assert.equal(uri?.toString(), 'cribwright:/library/vehicles.crib');
    if (!uri) return;
    const library = await vscode.workspace.openTextDocument(uri);
    assert.match(library.getText(), /VanTrailer53/);
    assert.isFalse(vscode.workspace.fs.isWritableFileSystem('cribwright'));
  });

  it('opens the page of a rule without a network', async () => {
    const page = await vscode.workspace.openTextDocument(
      vscode.Uri.parse('cribwright:/rules/crib-height.md'),
    );
    assert.match(page.getText(), /crib-height/);
    await vscode.commands.executeCommand('cribwright.showRule', 'crib-height');
    const labels = () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs).map(({ label }) => label);
    await until('the page laid out', vscode.window.tabGroups.onDidChangeTabs, () =>
      labels().some((label) => /preview.*crib-height/i.test(label)) ? true : undefined,
    );
  });

  it('links a finding to the page of its rule', async () => {
    const { document } = await openExample('plans/trailer-on-car-faulty.crib');
    const found = await findings(document.uri, 'a finding', (all) => all.length > 0);
    const codes = found.map(({ code }) => code).filter((code) => typeof code === 'object');
    assert.isAbove(codes.length, 0);
    for (const code of codes)
      assert.equal(code.target.toString(true).split('?')[0], 'command:cribwright.showRule');
  });

  it('completes what may stand there', async () => {
    const editor = await openExample(trailer);
    const place = at(editor.document, /base +(solid)/);
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      editor.document.uri,
      place,
    );
    const labels = items.map(({ label }) => (typeof label === 'string' ? label : label.label));
    assert.includeMembers(labels, ['solid', 'open']);
  });

  it('lays a file out so that laying it out again changes nothing', async () => {
    const { document } = await openExample(trailer);
    const options = { tabSize: 2, insertSpaces: true };
    const format = () =>
      vscode.commands.executeCommand<vscode.TextEdit[]>(
        'vscode.executeFormatDocumentProvider',
        document.uri,
        options,
      );
    const edit = new vscode.WorkspaceEdit();
    edit.set(document.uri, (await format()) ?? []);
    await vscode.workspace.applyEdit(edit);
    assert.deepEqual((await format()) ?? [], []);
  });

  it('renames a thing everywhere it is named', async () => {
    const { document } = await openExample(trailer);
    const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
      'vscode.executeDocumentRenameProvider',
      document.uri,
      at(document, /strut (S1)/).translate(0, -1),
      'Front',
    );
    const texts = edit.entries().flatMap(([, edits]) => edits.map(({ newText }) => newText));
    assert.isAtLeast(texts.length, 4);
    assert.deepEqual([...new Set(texts)], ['Front']);
  });

  it('outlines the plan', async () => {
    const { document } = await openExample(trailer);
    const outline = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>(
      'vscode.executeDocumentSymbolProvider',
      document.uri,
    );
    const names = outline.flatMap((plan) => plan.children.map(({ name }) => name));
    assert.isTrue(
      names.some((name) => /\bA\b/.test(name)),
      names.join('; '),
    );
  });

  it('starts its checks afresh when asked', async () => {
    const { document } = await openExample('plans/trailer-on-car-faulty.crib');
    await findings(document.uri, 'findings', (all) => all.length > 0);
    await vscode.commands.executeCommand('cribwright.restart');
    await findings(document.uri, 'findings again', (all) => all.length > 0);
  });

  it('runs what plans expect', async () => {
    await openExample(trailer);
    await vscode.commands.executeCommand('testing.runAll');
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await hands('sees', {
      selector: '.test-explorer [aria-label*="trailer-on-car.crib"][aria-label*="Passed"]',
    });
    await vscode.commands.executeCommand('workbench.view.explorer');
    await vscode.commands.executeCommand('workbench.action.closePanel');
  });

  it('says in the status bar how the plan stands', async () => {
    await openExample('plans/trailer-on-car-faulty.crib');
    await hands('sees', { selector: '[id$="cribwright.status"]', text: 'unsafe' });
    // Nobody knows how much a car bears that is under a trailer: that stays a warning.
    await openExample(trailer);
    await hands('sees', { selector: '[id$="cribwright.status"]', text: '1 warning' });
    await openExample('plans/suv-on-step-chocks.crib');
    await hands('sees', { selector: '[id$="cribwright.status"]', text: 'nothing unsafe found' });
  });

  it('speaks Spanish when asked to, and English again', async () => {
    const { document } = await openExample('plans/trailer-on-car-faulty.crib');
    const settings = vscode.workspace.getConfiguration('cribwright');
    const speaks = (words: RegExp) =>
      findings(document.uri, `words like ${words}`, (all) => all.some(({ message }) => words.test(message)));
    await speaks(/courses/);
    await settings.update('language', 'es', vscode.ConfigurationTarget.Workspace);
    await speaks(/hiladas/);
    await settings.update('language', undefined, vscode.ConfigurationTarget.Workspace);
    await speaks(/courses/);
  });

  it('offers the command line as a task where processes can be run', async () => {
    const tasks = await vscode.tasks.fetchTasks({ type: 'cribwright' });
    const node = typeof process === 'object' && process.versions?.node !== undefined;
    assert.deepEqual(
      tasks.map(({ name }) => name),
      node ? ['check all plans'] : [],
    );
    for (const { problemMatchers } of tasks) assert.isNotEmpty(problemMatchers);
  });
});
