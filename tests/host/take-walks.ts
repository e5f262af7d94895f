import type { Page } from 'playwright-core';
import { launchChromium } from './chromium.js';
import type { Tally } from './suite/lines.js';

/** What a person does in an editor, by its name: in a window of its own, by mouse and keys alone. */
export type Walk = readonly [name: string, walk: (page: Page) => Promise<void>];

/** Takes each walk in a window of its own, and photographs the window where one fails. */
export const takeWalks = async (walks: readonly Walk[]): Promise<Tally> => {
  const lines: string[] = [];
  let failed = 0;
  const browser = await launchChromium();
  try {
    for (const [name, walk] of walks) {
      const page = await browser.newPage({ viewport: { width: 1500, height: 950 } });
      page.setDefaultTimeout(30_000);
      try {
        await walk(page);
        lines.push(`pass  ${name}`);
      } catch (error) {
        failed += 1;
        await page.screenshot({ path: `tests/host/out/failed ${name}.png` });
        lines.push(`FAIL  ${name}\n${error instanceof Error ? error.stack : error}`);
      } finally {
        await page.close();
      }
    }
  } finally {
    await browser.close();
  }
  return { passed: lines.length - failed, failed, pending: 0, lines };
};
