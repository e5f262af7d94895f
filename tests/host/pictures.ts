import { mkdirSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { firstPlan } from '../../packages/extension/src/features/walkthrough/first-plan.js';
import { launchChromium } from './chromium.js';
import { panelHands } from './panel-hands.js';
import { serve } from './serve.js';
import { themePictures } from './theme-pictures.js';
import { root } from './vscode-server.js';
import { workbench } from './workbench.js';
import { workspaceCopy } from './workspace.js';

// Takes pictures of the real editor: those of the README, and those of each theme that are kept for the eye.
//   node --conditions=source --import tsx tests/host/pictures.ts [words that the names of the wanted ones hold]
const lineOf = (text: string, words: string): number => text.slice(0, text.indexOf(words)).split('\n').length;

const readme: Readonly<Record<string, (page: Page, origin: string) => Promise<void>>> = {
  /** An unsafe height, its sum, and the drawing beside it. */
  async editor(page, origin) {
    const window = workbench(page);
    const hands = panelHands(page);
    await window.open(origin, mkdtempSync(join(tmpdir(), 'first-plan-')), root);
    await window.pick('Preferences: Color Theme', 'Light Modern');
    await window.command('New Sample Plan');
    await window.status().filter({ hasText: 'unsafe' }).waitFor();
    await window.command('View: Toggle Primary Side Bar Visibility');
    await window.command('Open Drawing to the Side');
    await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
    await window.goToLine(lineOf(firstPlan, 'courses'));
    await window.command('Go to Worst Finding');
    await page.locator('.monaco-hover', { hasText: 'dressed depth' }).first().waitFor();
    await hands.lit?.({ element: 'crib/A' });
  },
  /** One crib close up. */
  async crib(page, origin) {
    const window = workbench(page);
    const hands = panelHands(page);
    await window.open(origin, workspaceCopy('', { 'editor.minimap.enabled': false }), root);
    await window.pick('Preferences: Color Theme', 'Light Modern');
    await window.openFile('trailer-on-car.crib');
    await window.command('View: Toggle Primary Side Bar Visibility');
    await window.command('Open Drawing to the Side');
    await hands.shows?.({ selector: 'svg [data-element="crib/A"]' });
    await hands.click?.({ selector: '#tab-crib' });
    await hands.shows?.({ selector: 'svg[data-view="crib"]' });
    // The third in the list: the first crib under the trailer.
    await hands.choose?.({ label: 'crib', index: 2 });
    await hands.shows?.({ selector: 'svg[aria-labelledby]:has-text("Crib A")' });
    await hands.shows?.({ selector: '.tally:has-text("1 warning")' });
  },
};

const folders = [
  { folder: 'packages/extension/media/readme', pictures: readme },
  { folder: 'tests/visual/host', pictures: themePictures },
];
/** Wide enough that a hover over the text covers nothing of the drawing. */
const size = { width: 1780, height: 920 };
const wanted = process.argv.slice(2);

const served = await serve();
const browser = await launchChromium();
try {
  for (const { folder, pictures } of folders) {
    mkdirSync(join(root, folder), { recursive: true });
    for (const [name, take] of Object.entries(pictures)) {
      const path = join(folder, `${name}.png`);
      if (wanted.length > 0 && !wanted.some((words) => path.includes(words))) continue;
      const page = await browser.newPage({ viewport: size });
      try {
        await take(page, served.origin);
      } catch (error) {
        await page.screenshot({ path: join(root, 'tests/host/out/failed-picture.png') });
        throw error;
      }
      // Away from everything that says something when the pointer rests on it.
      await page.mouse.move(size.width * 0.6, size.height - 15);
      await page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
      await page.screenshot({ path: join(root, path), animations: 'disabled' });
      await page.close();
      console.log(path);
    }
  }
} finally {
  await browser.close();
  served.stop();
}
