import { runTests } from '@vscode/test-electron';
import { type Browser, chromium, type Page } from 'playwright-core';
import { handsServer } from './hands-server.js';
import { panelHands } from './panel-hands.js';
import type { Tally } from './suite/lines.js';
import { workspaceCopy } from './workspace.js';

const debugPort = 9229 + 100;

/** Path of a desktop VS Code to test in, from `CRIBWRIGHT_VSCODE`; `download` there fetches one. */
export const desktopCode = (): string | undefined => process.env.CRIBWRIGHT_VSCODE || undefined;

/** Runs a suite in the desktop VS Code. Mouse and keys reach its window over the debugging port. */
export const runOnDesktop = async (code: string, extension: string, suite: string): Promise<Tally> => {
  let tally: Tally | undefined;
  let browser: Browser | undefined;
  const window = async (): Promise<Page> => {
    browser ??= await chromium.connectOverCDP(`http://127.0.0.1:${debugPort}`);
    const pages = browser.contexts().flatMap((context) => context.pages());
    const workbench = pages.find((page) => page.url().includes('workbench'));
    if (!workbench) throw new Error('The window of the desktop editor was not found.');
    return workbench;
  };
  const hands = await handsServer(async (name, given) => {
    if (name === 'report') {
      tally = (given as { tally: Tally }).tally;
      return undefined;
    }
    const act = panelHands(await window())[name];
    if (!act) throw new Error(`No hand can ${name}.`);
    return act(given as Parameters<typeof act>[0]);
  });
  let ended: unknown;
  try {
    await runTests({
      ...(code === 'download' ? {} : { vscodeExecutablePath: code }),
      extensionDevelopmentPath: extension,
      extensionTestsPath: suite,
      launchArgs: [
        workspaceCopy(hands.address),
        '--disable-extensions',
        `--remote-debugging-port=${debugPort}`,
      ],
    });
  } catch (error) {
    ended = error;
  } finally {
    await browser?.close();
    hands.close();
  }
  if (tally === undefined) throw ended ?? new Error('The suite did not report.');
  return tally;
};
