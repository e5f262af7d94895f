import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands, type Look } from './hands.js';
import { closeAll, openExample, paintings, retype, trailer } from './plans.js';
import { codeOf, findings } from './waiting.js';

const status = '[id$="cribwright.status"]';
const clean = 'plans/suv-on-step-chocks.crib';

describe('what is said of a plan', () => {
  afterEach(closeAll);

  it('is nothing good where there is no plan', async () => {
    await openExample('caches/engine-4.crib');
    await hands('sees', { selector: status, text: 'no plan in this file' });
    const empty = await vscode.workspace.openTextDocument({ language: 'cribwright', content: '' });
    await vscode.window.showTextDocument(empty);
    // That a file is empty is a warning of its own.
    await hands('sees', { selector: status, text: '1 warning' });
    await vscode.commands.executeCommand('cribwright.openPreview');
    await hands('shows', { selector: '.panel .waiting' });
    assert.notMatch((await hands<Look>('look')).text, /found nothing/);
  });

  it('goes at once when a megabyte is pasted, and comes back when it is taken out', async () => {
    const { document } = await openExample(clean);
    const editor = await vscode.window.showTextDocument(document);
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await drawings.of(document);
    await hands('sees', { selector: status, text: 'nothing unsafe found' });
    const crib = (n: number) =>
      `plan "Dock ${n}" {\n  vehicle trailer : VanTrailer53 {\n    cargo 36,000 lb from 4 ft to 48 ft\n  }\n  crib A {\n    timber Fir4x4 24 in long\n    layout 2 by 2\n    courses 11\n    at 21 ft, driver side 3 ft 4 in\n    captures rail\n  }\n}\n`;
    const megabyte = Array.from({ length: 3000 }, (_, n) => crib(n)).join('');
    const end = document.lineAt(document.lineCount - 1).range.end;
    await editor.edit((edit) => edit.insert(end, megabyte));
    await hands('sees', { selector: status, text: 'checking' });
    await hands('shows', { selector: '.panel.outdated' });
    assert.match((await hands<Look>('look')).notice ?? '', /Not checked yet/);
    await vscode.commands.executeCommand('undo');
    await hands('sees', { selector: status, text: 'nothing unsafe found' });
    await findings(document.uri, 'no finding of what was pasted', (all) => all.length === 0);
    await hands('shows', { selector: '.panel:not(.outdated)' });
  });

  it('is a mark in the panel where one brace is missing', async () => {
    const editor = await openExample(clean);
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await drawings.of(editor.document);
    await retype(editor, /grade +2 % toward front\n {2}\}/, 'grade 2 % toward front\n');
    await drawings.of(editor.document);
    await hands('shows', { selector: '.tally .warning' });
    assert.match((await hands<Look>('look')).text, /1 check could not run/);
  });

  it('is of the newer version alone where two are compared', async () => {
    const older = vscode.Uri.parse('review:/older/trailer-on-car-faulty.crib');
    const newer = (await openExample('plans/trailer-on-car-faulty.crib')).document;
    const text = newer.getText();
    const provider = vscode.workspace.registerFileSystemProvider('review', shownOnly(text), {
      isReadonly: true,
    });
    try {
      await vscode.commands.executeCommand('vscode.diff', older, newer.uri);
      await retype(await openExample('plans/trailer-on-car-faulty.crib'), /brakes +set/, 'brakes  unknown');
      await findings(newer.uri, 'findings of the newer version', (all) => all.length > 0);
      assert.deepEqual(vscode.languages.getDiagnostics(older), []);
    } finally {
      provider.dispose();
    }
  });

  it('is that a finding was accepted, in problems, status, lens and panel alike', async () => {
    const editor = await openExample(trailer);
    const { document } = editor;
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await hands('sees', { selector: status, text: '1 warning' });
    const [warning] = await findings(document.uri, 'the warning', (all) => all.length === 1);
    const accept = `accept ${warning && codeOf(warning)} on car because "shored" by "training captain" until 2099-01-31\n  `;
    await retype(editor, /expect safe/, `${accept}expect safe`);
    const accepted = await findings(
      document.uri,
      'the acceptance alone',
      (all) => all.length === 1 && all[0]?.message.startsWith('Accepted by training captain') === true,
    );
    assert.deepEqual(
      accepted.map(({ severity }) => severity),
      [vscode.DiagnosticSeverity.Information],
    );
    await hands('sees', { selector: status, text: '1 accepted' });
    await hands('sees', { selector: '.codelens-decoration', text: '1 accepted' });
    await drawings.of(document);
    await hands('shows', { selector: '.tally .note' });
    assert.match((await hands<Look>('look')).text, /1 accepted/);
  });
});

/** A file system of one text that nobody may change. */
const shownOnly = (text: string): vscode.FileSystemProvider => {
  const bytes = new TextEncoder().encode(text);
  const refuse = () => {
    throw vscode.FileSystemError.NoPermissions();
  };
  return {
    onDidChangeFile: new vscode.EventEmitter<vscode.FileChangeEvent[]>().event,
    watch: () => new vscode.Disposable(() => undefined),
    stat: () => ({ type: vscode.FileType.File, ctime: 0, mtime: 0, size: bytes.length }),
    readFile: () => bytes,
    readDirectory: () => [],
    createDirectory: refuse,
    writeFile: refuse,
    delete: refuse,
    rename: refuse,
  };
};
