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
  await page.locator('.tab.active', { hasText: plan }).first().waitFor();
  const hands = panelHands(page);
  await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
  return { window: workbench(page), hands };
};

/** What the browser has stored of the window: `key=value`, line by line. */
const stored = async (page: Page): Promise<string> => {
  // The loader of this file names functions through a helper that the page does not have.
  await page.evaluate('globalThis.__name ??= (f) => f');
  return page.evaluate(async () => {
    const read = <T>(request: IDBRequest<T>) =>
      new Promise<T>((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    let all = '';
    for (const { name } of await indexedDB.databases()) {
      const db = await read(indexedDB.open(name ?? ''));
      for (const store of [...db.objectStoreNames].filter((s) => s === 'ItemTable')) {
        const items = db.transaction(store).objectStore(store);
        const [keys, values] = await Promise.all([read(items.getAllKeys()), read(items.getAll())]);
        all += keys.map((key, i) => `${key}=${values[i]}\n`).join('');
      }
      db.close();
    }
    return all.replaceAll('\\', '');
  });
};

/** Waits until the browser has stored a layout: the editor hands it over some seconds after it changed. */
const untilStored = async (page: Page, fits: readonly RegExp[]): Promise<void> => {
  const deadline = Date.now() + 120_000;
  for (;;) {
    const now = await stored(page);
    const missing = fits.filter((one) => !one.test(now));
    if (missing.length === 0) return;
    if (Date.now() > deadline) throw new Error(`Not stored: ${missing.join(', ')}`);
    await page.waitForTimeout(100);
  }
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
    const renamed = page.locator('.tab.active', { hasText: 'engine-40.crib' });
    // The editor may ask whether other files may be changed with it.
    await Promise.race([renamed.waitFor(), ok.click().catch(() => renamed.waitFor())]);
    await renamed.waitFor();
    await page.locator('.tab', { hasText: 'suv-on-step-chocks.crib' }).first().click();
    await used.first().waitFor();
    if (!existsSync(join(folder, 'caches/engine-40.crib'))) throw new Error('The file was not renamed.');
    await window.photograph('as-a-user-3-renamed');
  },

  async 'the layout is there again when the page is loaded anew'(page, address) {
    const { window, hands } = await opened(page, address);
    await window.openFile('suv-on-step-chocks.crib');
    await page.locator('.tab', { hasText: 'Drawing of suv-on-step-chocks.crib' }).waitFor();
    await hands.shows?.({ selector: 'svg [data-element*="chock"]' });
    await hands.click?.({ selector: '#tab-side' });
    await hands.shows?.({ selector: 'svg[data-view="side"]' });
    await window.command('View: Toggle Primary Side Bar Visibility');
    await page.locator('.part.sidebar').waitFor({ state: 'hidden' });
    await untilStored(page, [
      /^memento\/workbench\.parts\.editor=.*suv-on-step-chocks\.crib/m,
      /"view":"side"/,
      /^workbench\.sideBar\.hidden=true/m,
    ]);
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

/** Takes each walk in an editor of its own, served as `npm run editor` serves it, with a copy of the examples. */
export const asAUser = (): Promise<Tally> =>
  takeWalks(
    Object.entries(walks).map(([name, walk]) => [
      name,
      async (page) => {
        const folder = workspaceCopy('');
        const served = await serveForUser(folder, mkdtempSync(join(tmpdir(), 'cribwright-user-')));
        try {
          await walk(page, served.address, folder);
        } finally {
          served.stop();
        }
      },
    ]),
  );
