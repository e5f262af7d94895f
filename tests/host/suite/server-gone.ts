import { execFileSync } from 'node:child_process';
import { assert } from 'chai';
import * as vscode from 'vscode';
import { hands, type Look } from './hands.js';
import { closeAll, openExample, paintings, retype } from './plans.js';
import { codeOf, findings, until } from './waiting.js';

const plan = 'plans/suv-on-step-chocks.crib';

/** The process of the language server: a child of this one. */
const serverProcess = (): number | undefined => {
  const rows = execFileSync('ps', ['-A', '-o', 'pid=,ppid=,args='], { encoding: 'utf8' }).split('\n');
  const found = rows
    .map((row) => /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(row))
    .find((row) => {
      return Number(row?.[2]) === process.pid && row?.[3]?.includes('server.cjs');
    });
  return found ? Number(found[1]) : undefined;
};

/** Wakes a waiting test often: a process that begins or ends tells nobody. */
const often: vscode.Event<unknown> = (look) => {
  const timer = setInterval(look, 100);
  return new vscode.Disposable(() => clearInterval(timer));
};

/** Ends the server, and waits for the next one where there is to be one. */
const kill = async (again: boolean): Promise<void> => {
  const gone = serverProcess();
  if (gone === undefined) throw new Error('No server is running.');
  process.kill(gone, 'SIGKILL');
  await until(again ? 'the next server' : 'no server', often, () => {
    const now = serverProcess();
    return (again ? now !== undefined && now !== gone : now === undefined) ? true : undefined;
  });
};

const status = '[id$="cribwright.status"]';
const lens = '.codelens-decoration';

describe('a server that is gone', () => {
  after(async () => {
    await vscode.commands.executeCommand('cribwright.restart');
    await vscode.commands.executeCommand('notifications.clearAll');
    await closeAll();
  });

  it('leaves no verdict: status, lens, panel, problems and tests say that nothing was checked', async () => {
    const editor = await openExample(plan);
    const { document } = editor;
    const drawings = await paintings();
    await vscode.commands.executeCommand('cribwright.openPreview');
    await drawings.of(document);
    await hands('sees', { selector: status, text: 'nothing unsafe found' });
    await hands('sees', { selector: lens, text: 'nothing unsafe found' });
    await vscode.commands.executeCommand('testing.runAll');
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    const item = '.test-explorer [aria-label*="suv-on-step-chocks.crib"]';
    await hands('sees', { selector: `${item}[aria-label*="Passed"]:not([aria-label*="outdated"])` });

    // The editor starts a server again four times; after the fifth it lets it be.
    for (const again of [true, true, true, true, false]) await kill(again);
    await hands('sees', { selector: status, text: 'Not checked' });
    await retype(editor, /at +5 ft/, 'at 40 ft');

    await hands('sees', { selector: status, text: 'Not checked' });
    await hands('sees', { selector: lens, text: 'Not checked' });
    await hands('lacks', { selector: lens, text: 'nothing unsafe found' });
    await hands('shows', { selector: '.panel.outdated' });
    const look = await hands<Look>('look');
    assert.match(look.notice ?? '', /Not checked/);
    assert.notMatch(look.text, /found nothing|nothing unsafe/i);
    const [problem] = await findings(document.uri, 'a problem that says it', (all) => all.length === 1);
    assert.equal(problem && codeOf(problem), 'not-checked');
    assert.equal(problem?.severity, vscode.DiagnosticSeverity.Error);
    await hands('sees', { selector: `${item}[aria-label*="outdated"]` });

    await vscode.commands.executeCommand('cribwright.restart');
    await findings(document.uri, 'findings of the text', (all) =>
      all.every((d) => codeOf(d) !== 'not-checked'),
    );
    await drawings.of(document);
    assert.isUndefined((await hands<Look>('look')).notice?.trim() || undefined);
    await hands('lacks', { selector: lens, text: 'Not checked' });
    await hands('lacks', { selector: status, text: 'Not checked' });
  });
});
