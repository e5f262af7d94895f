import { readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { root } from './vscode-server.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

type Given = Readonly<Record<string, string | number | undefined>>;

/** Mouse, keys and eyes on the panel, for the suite. Each name below is one thing it may ask for. */
export const panelHands = (page: Page): Readonly<Record<string, (given: Given) => Promise<unknown>>> => ({
  /** What the panel shows. */
  look: async () => {
    const frame = await panelFrame(page);
    return frame.evaluate(() => {
      const text = (selector: string) => document.querySelector(selector)?.textContent ?? undefined;
      return {
        text: document.body.textContent,
        drawing: text('svg'),
        elements: [...document.querySelectorAll('svg [data-element]')].map((e) =>
          e.getAttribute('data-element'),
        ),
        lit: [...document.querySelectorAll('svg [data-lit]')].map((e) => e.getAttribute('data-element')),
        notice: text('[role=status]'),
        caution: text('.caution'),
      };
    });
  },
  click: async ({ selector }) => {
    const at = await middle(page, String(selector));
    await page.mouse.click(at.x, at.y);
  },
  drag: async ({ selector, right, down }) => {
    const at = await middle(page, String(selector));
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x + Number(right) / 2, at.y + Number(down) / 2, {
      steps: 5,
    });
    await page.mouse.move(at.x + Number(right), at.y + Number(down), {
      steps: 5,
    });
    await page.mouse.up();
  },
  /** Waits until the panel lights the shape of an element. */
  lit: async ({ element }) => {
    const frame = await panelFrame(page);
    await frame.waitForSelector(`[data-element="${element}"][data-lit]`, {
      state: 'attached',
      timeout: 60_000,
    });
  },
  /** Waits until the panel has taken on a theme, and gives its name. */
  theme: async ({ kind }) => {
    const frame = await panelFrame(page);
    await frame.waitForFunction((name) => document.body.classList.contains(name), `vscode-${kind}`);
    return `vscode-${kind}`;
  },
  /** Waits until the panel shows something. */
  shows: async ({ selector }) => {
    const deadline = Date.now() + 60_000;
    for (;;) {
      const frame = await panelFrame(page);
      const there = await frame
        .waitForSelector(String(selector), { state: 'attached', timeout: 1000 })
        .catch(() => undefined);
      if (there) return;
      if (Date.now() > deadline) throw new Error(`The panel does not show ${selector}.`);
    }
  },
  focus: async ({ selector }) => {
    const frame = await panelFrame(page);
    await frame.locator(String(selector)).first().focus();
  },
  /** Chooses an entry of a list by its place in it. */
  choose: async ({ label, index }) => {
    const frame = await panelFrame(page);
    await frame
      .getByLabel(String(label))
      .and(frame.locator('select'))
      .selectOption({ index: Number(index) });
  },
  /** Waits until the window shows something outside the panel. */
  sees: async ({ selector, text }) => {
    const found = page.locator(String(selector), text === undefined ? {} : { hasText: String(text) });
    await found.first().waitFor({ timeout: 60_000 });
  },
  /** Waits until the window shows such a thing no more. */
  lacks: async ({ selector, text }) => {
    const found = page.locator(String(selector), text === undefined ? {} : { hasText: String(text) });
    await found.first().waitFor({ state: 'detached', timeout: 60_000 });
  },
  /** Lets pages read and write the clipboard, as a person would when asked. */
  allowClipboard: async () => page.context().grantPermissions(['clipboard-read', 'clipboard-write']),
  /** The picture that lies on the clipboard. */
  clipboardPicture: async () => {
    const frame = await panelFrame(page);
    return frame.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      const image = await createImageBitmap((await item?.getType('image/png')) ?? new Blob());
      return { width: image.width, height: image.height };
    });
  },
  /** Takes what a dialog of the editor proposes. */
  accept: async () => {
    await page.locator('.quick-input-widget input.input').waitFor();
    await page.keyboard.press('Enter');
  },
  /** What the page of the panel may load. */
  policy: async () => {
    const frame = await panelFrame(page);
    return frame.evaluate(() =>
      document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content'),
    );
  },
  press: async ({ keys }) => page.keyboard.press(String(keys)),
  type: async ({ text }) => page.keyboard.type(String(text)),
  /** Serious and critical findings of axe in the panel. */
  axe: async () => {
    const frame = await panelFrame(page);
    await frame.evaluate(axe);
    return frame.evaluate(async () => {
      // biome-ignore lint/suspicious/noExplicitAny: axe puts itself on the page.
      const { violations } = await (globalThis as any).axe.run(document, {
        resultTypes: ['violations'],
      });
      return violations
        .filter((v: { impact: string }) => ['serious', 'critical'].includes(v.impact))
        .map(
          (v: { id: string; nodes: { html: string }[] }) =>
            `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 200)).join(' | ')}`,
        );
    });
  },
  screenshot: async ({ name }) => {
    const path = join(root, 'tests/host/out', `${name}.png`);
    await mkdir(dirname(path), { recursive: true });
    await page.screenshot({ path });
    return path;
  },
});

/** The page of the panel that is in view. */
const panelFrame = async (page: Page): Promise<Frame> => {
  const deadline = Date.now() + 20_000;
  while (Date.now() < deadline) {
    for (const frame of page.frames()) {
      const inView = await frame
        .evaluate(() => document.querySelector('#panel') !== null && document.visibilityState === 'visible')
        .catch(() => false);
      if (inView) {
        // The loader of this file names functions through a helper that the page does not have.
        await frame.evaluate('globalThis.__name ??= (f) => f');
        return frame;
      }
    }
    await page.waitForTimeout(50);
  }
  throw new Error(
    `No drawing panel is in view. Frames: ${page
      .frames()
      .map((f) => f.url().slice(0, 80))
      .join(', ')}`,
  );
};

const middle = async (page: Page, selector: string): Promise<{ x: number; y: number }> => {
  const frame = await panelFrame(page);
  const shape = frame.locator(selector).first();
  await shape.waitFor({ state: 'attached', timeout: 60_000 });
  const box = await shape.boundingBox();
  if (!box) throw new Error(`${selector} is not in view`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};
