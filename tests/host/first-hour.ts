import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { firstPlan } from '../../packages/extension/src/features/walkthrough/first-plan.js';
import { panelHands } from './panel-hands.js';
import { serve } from './serve.js';
import type { Tally } from './suite/lines.js';
import { takeWalks } from './take-walks.js';
import { workbench } from './workbench.js';
import { workspaceCopy } from './workspace.js';

const lineOf = (words: string): number => firstPlan.slice(0, firstPlan.indexOf(words)).split('\n').length;

/** What a new user does in the first hour, by mouse and keys alone. No code runs inside the editor for it. */
const walks: Readonly<Record<string, (page: Page, origin: string, extension: string) => Promise<void>>> = {
  async 'the walkthrough ends with a plan in which nothing is unsafe'(page, origin, extension) {
    const window = workbench(page);
    await window.open(origin, mkdtempSync(join(tmpdir(), 'first-plan-')), extension);
    await window.walkthrough('Cribwright: Open Walkthrough');
    await page.getByRole('button', { name: 'Open a sample plan' }).first().click();
    await page.locator('.tab.active', { hasText: 'Untitled-1' }).waitFor();
    await window.status().filter({ hasText: 'unsafe' }).waitFor();
    await window.photograph('walkthrough-1-unsafe');

    await window.command('Open Drawing to the Side');
    await panelHands(page).shows?.({ selector: '[data-element="crib/A"]' });
    await window.photograph('walkthrough-2-drawn');

    await window.command('Go to Worst Finding');
    await page.locator('.monaco-hover', { hasText: '38.5 in' }).first().waitFor();
    await window.photograph('walkthrough-3-why');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+.');
    await page.locator('.action-widget').waitFor();
    await window.photograph('walkthrough-4-fixes');
    const best = page.locator('.action-widget .monaco-list-row.focused');
    await best.filter({ hasText: 'Capture all 4 contacts' }).waitFor();
    await page.keyboard.press('Enter');
    await window.status().filter({ hasText: 'nothing unsafe found' }).waitFor();
    await window.typeAtEndOf(lineOf('build ') + 1, '\nexpect safe');
    await window.status().filter({ hasText: 'nothing unsafe found' }).waitFor();
    await page.keyboard.press('Control+Home');
    await page.getByText('1 of 1 expectations met').first().waitFor();
    await window.photograph('walkthrough-5-safe');
  },

  async 'the drawing is there again, as it was, when the window is loaded anew'(page, origin, extension) {
    const window = workbench(page);
    const hands = panelHands(page);
    await window.open(origin, workspaceCopy(''), extension);
    await window.openFile('trailer-on-car.crib');
    await window.command('Open Drawing to the Side');
    await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
    await hands.click?.({ selector: '#tab-side' });
    await hands.shows?.({ selector: 'svg[data-view="side"]' });
    await window.command('Developer: Reload Window');
    await page.waitForEvent('load');
    await hands.shows?.({ selector: 'svg[data-view="side"]' });
    await window.photograph('loaded-anew');
  },
};

/**
 * Takes each walk in a window of its own.
 *
 * @param extension folder of the extension in development
 * @param data folder of the server's own files, where extensions are installed
 */
export const firstHour = async (extension: string, data: string): Promise<Tally> => {
  const served = await serve({ data });
  try {
    return await takeWalks(
      Object.entries(walks).map(([name, walk]) => [name, (page) => walk(page, served.origin, extension)]),
    );
  } finally {
    served.stop();
  }
};
