import { samplePlans } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startChromium } from './chromium.js';
import { englishLeft } from './english-left.js';
import { openPanel, type Theme } from './fake-host.js';

const { hastyTrailer: plan } = samplePlans;
if (plan === undefined) throw new Error('the sample plan is gone');
const analysis = analyze(plan, { push: true });

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium(true);
});
afterAll(() => browser?.close());

const themes: readonly Theme[] = ['light', 'dark', 'high-contrast'];

it.each(themes)('has no English left in the panel, and nothing cut off (%s)', async (theme) => {
  const host = await openPanel(browser, plan, analysis, { theme, width: 480, locale: 'es' });
  await host.show();
  await host.page.getByText('Más', { exact: true }).click();
  const { page } = host;
  const texts = await page.evaluate(() => {
    const walker = document.createTreeWalker(
      document.querySelector('#panel') ?? document,
      NodeFilter.SHOW_TEXT,
    );
    const shown: string[] = [];
    while (walker.nextNode()) shown.push(walker.currentNode.nodeValue?.trim() ?? '');
    const labels = [...document.querySelectorAll('#panel [aria-label], #panel [aria-valuetext]')].flatMap(
      (e) => [e.getAttribute('aria-label') ?? '', e.getAttribute('aria-valuetext') ?? ''],
    );
    return [...shown, ...labels].filter((t) => t !== '');
  });
  expect(texts).toEqual(expect.arrayContaining(['Supuesto', 'Ajustar', 'Más']));
  expect(texts.length).toBeGreaterThan(40);
  expect(englishLeft(texts, plan)).toEqual([]);
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('#panel button, #panel summary, #panel dt, #panel dd')]
      .filter((e) => e.scrollWidth > e.clientWidth + 1 || e.getBoundingClientRect().right > innerWidth)
      .map((e) => e.textContent),
  );
  expect(cut).toEqual([]);
  expect(host.errors).toEqual([]);
  await page.context().close();
});
