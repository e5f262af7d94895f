import { drawScene, firstChoice, paletteOf, svgOf } from '@cribwright/drawing';
import { samplePlans } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.js';
import { type FakeHost, openPanel, origin, testUri } from './fake-host.js';

const { trailerOnCar: plan } = samplePlans;
if (plan === undefined) throw new Error('the sample plan is gone');
const analysis = analyze(plan);
const scene = drawScene(plan, analysis, firstChoice);

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium(true);
});
afterAll(() => browser?.close());

const opened = async (options: Parameters<typeof openPanel>[3] = {}): Promise<FakeHost> => {
  const host = await openPanel(browser, plan, analysis, options);
  await host.show();
  await host.page.getByText('More', { exact: true }).click();
  return host;
};

/** A picture as the browser reads it: base64 of a PNG, or what lies on the clipboard. */
interface Picture {
  readonly width: number;
  readonly height: number;
  /** How many colors it has. */
  readonly shades: number;
  readonly colors: readonly string[];
}

/** Dots for so many mm, at 200 dots an inch. */
const dots = (mm: number): number => Math.round((mm / 25.4) * 200);

const seen = (page: Page, png: string | undefined, places: readonly (readonly [number, number])[]) =>
  page.evaluate(
    async ({ base64, spots }): Promise<Picture> => {
      const [item] = base64 === undefined ? await navigator.clipboard.read() : [];
      const bytes = Uint8Array.from(atob(base64 ?? ''), (c) => c.charCodeAt(0));
      const blob = (await item?.getType('image/png')) ?? new Blob([bytes], { type: 'image/png' });
      const image = await createImageBitmap(blob);
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext('2d');
      context?.drawImage(image, 0, 0);
      const { data } = context?.getImageData(0, 0, image.width, image.height) ?? { data: [] };
      const hex = (at: number) =>
        `#${[0, 1, 2].map((i) => (data[at + i] ?? 0).toString(16).padStart(2, '0')).join('')}`;
      const all = new Set<string>();
      for (let at = 0; at < data.length; at += 4 * 7) all.add(hex(at));
      return {
        width: image.width,
        height: image.height,
        shades: all.size,
        colors: spots.map(([x, y]) => hex((y * image.width + x) * 4)),
      };
    },
    { base64: png, spots: places },
  );

describe('taking a drawing away', () => {
  it('saves SVG, PNG and PDF', async () => {
    const host = await opened();
    await host.page.getByRole('button', { name: 'Save as SVG' }).click();
    expect((await host.next('export')).data).toBe(svgOf(scene));
    await host.page.getByRole('button', { name: 'Save as PNG' }).click();
    const png = await seen(host.page, (await host.next('export')).data, []);
    expect([png.width, png.height]).toEqual([dots(scene.width), dots(scene.height)]);
    expect(png.shades).toBeGreaterThan(20);
    await host.send({ kind: 'make', uri: testUri, format: 'pdf' });
    const pdf = await host.next('export');
    expect(
      Buffer.from(pdf.data ?? '', 'base64')
        .toString('latin1')
        .slice(0, 5),
    ).toBe('%PDF-');
    expect(host.errors).toEqual([]);
    await host.page.context().close();
  });

  it.each([
    ['light', 'mouse'],
    ['dark', 'keys'],
  ] as const)('copies it as a picture, in the theme %s, by %s', async (theme, by) => {
    const host = await opened({ theme });
    await host.page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin });
    const copy = host.page.getByRole('button', { name: 'Copy as a picture' });
    if (by === 'mouse') await copy.click();
    else {
      await copy.focus();
      await host.page.keyboard.press('Enter');
    }
    await host.page.getByText('The drawing is on the clipboard as a picture.').waitFor();
    expect(await host.page.locator('.sheet-of-more').isVisible()).toBe(false);
    expect(await host.page.evaluate(() => document.activeElement?.textContent)).toBe('More');
    // The rule under the title, in ink; and a corner of the sheet, on the paper of the theme and not on nothing.
    const heading = scene.items.flatMap((i) => (i.kind === 'group' && i.key === 'heading' ? i.items : []));
    const rule = heading.find((i) => i.kind === 'line');
    if (rule?.kind !== 'line') throw new Error('the heading has no rule');
    const [x, y] = [dots((rule.from.x + rule.to.x) / 2), dots(rule.from.y)];
    const png = await seen(host.page, undefined, [
      [4, 4],
      [x, y],
      [x, y - 1],
    ]);
    expect([png.width, png.height]).toEqual([dots(scene.width), dots(scene.height)]);
    expect(png.shades).toBeGreaterThan(20);
    const [corner, ...ink] = png.colors;
    expect(corner).toBe(paletteOf(theme).paper);
    expect(ink.some((color) => color !== corner)).toBe(true);
    await host.page.context().close();
  });

  it('says loudly where the clipboard is shut, and offers a file', async () => {
    const host = await opened();
    await host.page.evaluate(() => {
      const shut = () => Promise.reject(new DOMException('Write permission denied.', 'NotAllowedError'));
      Object.defineProperty(navigator, 'clipboard', { value: { write: shut } });
    });
    await host.page.getByRole('button', { name: 'Copy as a picture' }).click();
    const notice = host.page.getByRole('status');
    await notice.getByText('is not on the clipboard').waitFor();
    expect(await notice.textContent()).toContain('Write permission denied');
    await notice.getByRole('button', { name: 'Save as PNG' }).click();
    expect(await host.next('export')).toMatchObject({
      format: 'png',
      data: expect.stringMatching(/^iVBORw0KGgo/),
    });
    await host.page.context().close();
  });
});
