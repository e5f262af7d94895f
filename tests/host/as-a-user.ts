import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { panelHands } from './panel-hands.js';
import type { Tally } from './suite/lines.js';
import { takeWalks } from './take-walks.js';
import { serveForUser } from './user-editor.js';
import { workbench } from './workbench.js';
import { workspaceCopy } from './workspace.js';

const plan = 'trailer-on-car.crib';

/** Opens the editor of `npm run editor`, and waits until the first plan stands there with its drawing. */
const opened = async (page: Page, address: string) => {
  await page.goto(address);
  await page.locator('.tab.active', { hasText: plan }).waitFor();
  const hands = panelHands(page);
  await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
  return { window: workbench(page), hands };
};

const dialog = (page: Page) => page.locator('.monaco-dialog-box');

/** What the editor of `npm run editor` does for who plans in it: nothing is lost, and nothing is forgotten. */
const walks: Readonly<Record<string, (page: Page, address: string, folder: string) => Promise<void>>> = {
  async 'the first plan is opened with its drawing'(page, address) {
    const { window } = await opened(page, address);
    await window.status().filter({ hasText: '1 warning' }).waitFor();
    await window.photograph('as-a-user-1-opened');
  },

  async 'an unsaved plan is asked about before it is closed'(page, address, folder) {
    const { window } = await opened(page, address);
    const before = readFileSync(join(folder, 'plans', plan), 'utf8');
    await page.locator('.tab', { hasText: plan }).first().click();
    await window.typeAtEndOf(1, '\n// looked at twice');
    await page.locator('.tab.dirty', { hasText: plan }).waitFor();
    await window.command('View: Close Editor');
    await dialog(page)
      .filter({ hasText: `save the changes you made to ${plan}` })
      .waitFor();
    await window.photograph('as-a-user-2-asked');
    await page.keyboard.press('Escape');
    await page.locator('.tab.dirty', { hasText: plan }).waitFor();
    await window.command('File: Revert File');
    await page.locator('.tab.dirty').waitFor({ state: 'detached' });
    if (readFileSync(join(folder, 'plans', plan), 'utf8') !== before) throw new Error('The plan was saved.');
  },

  async 'a file that is renamed is followed by the plans that use it'(page, address, folder) {
    const { window } = await opened(page, address);
    await window.openFile('suv-on-step-chocks.crib');
    await window.openFile('engine-4.crib');
    await window.command('File: Reveal Active File in Explorer View');
    await page.keyboard.press('F2');
    const box = page.locator('.explorer-folders-view .monaco-inputbox input');
    await box.waitFor();
    await box.fill('engine-40.crib');
    await page.keyboard.press('Enter');
    const used = page.locator('.view-line', { hasText: 'caches/engine-40.crib' });
    const ok = dialog(page).getByRole('button', { name: /^OK$|^Yes$/ });
    await ok.waitFor({ timeout: 5_000 }).then(
      () => ok.click(),
      () => undefined,
    );
    await window.openFile('suv-on-step-chocks.crib');
    await used.first().waitFor();
    if (!existsSync(join(folder, 'caches/engine-40.crib'))) throw new Error('The file was not renamed.');
    await window.photograph('as-a-user-3-renamed');
  },

  async 'the layout is there again when the page is loaded anew'(page, address) {
    const { window, hands } = await opened(page, address);
    await window.openFile('suv-on-step-chocks.crib');
    await hands.shows?.({ selector: 'svg [data-element="step chock/A"], svg [data-element*="chock"]' });
    await hands.click?.({ selector: '#tab-side' });
    await hands.shows?.({ selector: 'svg[data-view="side"]' });
    await window.command('View: Toggle Primary Side Bar Visibility');
    await page.locator('.part.sidebar').waitFor({ state: 'hidden' });
    await page.reload();
    await page.locator('.tab.active', { hasText: 'suv-on-step-chocks.crib' }).first().waitFor();
    await hands.shows?.({ selector: 'svg[data-view="side"]' });
    await page.locator('.tab', { hasText: plan }).first().waitFor();
    await page.locator('.part.sidebar').waitFor({ state: 'hidden' });
    const drawings = await page.locator('.tab', { hasText: 'Drawing of' }).count();
    if (drawings !== 1) throw new Error(`${drawings} drawings are open.`);
    await window.photograph('as-a-user-4-loaded-anew');
  },
};

/** Takes each walk in an editor, served as `npm run editor` serves it, with a copy of the examples. */
export const asAUser = async (): Promise<Tally> => {
  const folder = workspaceCopy('');
  const served = await serveForUser(folder, mkdtempSync(join(tmpdir(), 'cribwright-user-')));
  try {
    return await takeWalks(
      Object.entries(walks).map(([name, walk]) => [name, (page) => walk(page, served.address, folder)]),
    );
  } finally {
    served.stop();
  }
};
