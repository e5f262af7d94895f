import { drawScene, firstChoice, svgOf, viewsOf } from '@cribwright/drawing';
import { type Scene, textBox, walk } from '@cribwright/drawing/page';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startChromium } from './chromium.js';
import { sampleDrawings } from './drawn-plans.js';

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium(true);
});
afterAll(() => browser?.close());

const textsOf = (scene: Scene) => [...walk(scene.items)].flatMap((i) => (i.kind === 'text' ? [i] : []));

// The layout counts with the widths of Helvetica. A reader may have another font, up to a fifth wider.
it.each(['as it is', 'with a wide font'])(
  'gives words the room that was laid out for them, %s',
  async (font) => {
    const page = await browser.newPage();
    for (const { plan, analysis } of sampleDrawings([], ['tallCrib'])) {
      for (const view of viewsOf(plan, analysis)) {
        const scene = drawScene(plan, analysis, { ...firstChoice, view: view.id });
        const svg = svgOf(scene);
        await page.setContent(
          font === 'as it is'
            ? svg
            : svg.replace(/font-family:[^;}]+/, "font-family:'DejaVu Sans Mono',monospace"),
        );
        const lengths = await page.evaluate(() =>
          [...document.querySelectorAll<SVGTextElement>('svg.cw text')].map((t) => t.getComputedTextLength()),
        );
        const texts = textsOf(scene);
        expect(lengths).toHaveLength(texts.length);
        const wrong = texts.flatMap((t, i) => {
          const { left, right } = textBox({ ...t, turn: 0 });
          const off = Math.abs((lengths[i] ?? 0) - (right - left));
          // Of a lone sign in a badge the width does not matter: it stands in the middle.
          return [...t.text].length > 1 && off > 0.02 ? [`${t.text}: ${off.toFixed(2)} mm`] : [];
        });
        expect([view.id, ...wrong]).toEqual([view.id]);
      }
    }
    await page.close();
  },
);
