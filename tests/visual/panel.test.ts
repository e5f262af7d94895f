import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { firstChoice, scenesFor, svgOf } from '@cribwright/drawing';
import { english } from '@cribwright/messages/testing';
import { samplePlans } from '@cribwright/model/testing';
import type { PanelState } from '@cribwright/preview';
import { analyze } from '@cribwright/rules';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.js';
import { type FakeHost, messageFor, openPanel, type Theme, testUri } from './fake-host.js';

const { trailerOnCar: plan } = samplePlans;
if (plan === undefined) throw new Error('the sample plan is gone');
const analysis = analyze(plan);

let browser: Browser;
let browserForSpace: Browser;
beforeAll(async () => {
  // The one that draws in space is slow at all else.
  [browser, browserForSpace] = await Promise.all([startChromium(true), startChromium()]);
});
afterAll(() => Promise.all([browser?.close(), browserForSpace?.close()]));

const opened = async (options: Parameters<typeof openPanel>[3] = {}): Promise<FakeHost> => {
  const host = await openPanel(browser, plan, analysis, options);
  await host.show();
  return host;
};
const shape = (host: FakeHost, element: string) =>
  host.page.locator(`svg g[role="graphics-object"][data-element="${element}"]`).first();

describe('the panel', () => {
  it('draws the same bytes as the command line, under a strict content policy', async () => {
    const host = await opened();
    const drawn = await host.page.evaluate(() => {
      const svg = document.querySelector('svg.cw')?.cloneNode(true) as Element;
      for (const g of svg.querySelectorAll('[tabindex]')) g.removeAttribute('tabindex');
      return svg.outerHTML;
    });
    const [scene] = scenesFor(plan, analysis, firstChoice);
    const bare =
      scene &&
      svgOf(scene)
        .replace(/<style>.*?<\/style>/s, '')
        .trim();
    // A browser writes the signs > and " in text in its own way; the shapes and numbers are the same.
    const plain = (text = '') =>
      text.replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&nbsp;', '\u00a0');
    expect(plain(drawn)).toBe(plain(bare));
    expect(host.errors).toEqual([]);
    await host.page.context().close();
  });

  it('touches nothing of a drawing that comes again, and little where one crib moved', async () => {
    const host = await opened();
    await host.page.evaluate(() => {
      const touched: string[] = [];
      Object.assign(window, { touched });
      new MutationObserver((changes) => touched.push(...changes.map((c) => c.type))).observe(
        document.querySelector('svg.cw') as Element,
        { subtree: true, childList: true, attributes: true, characterData: true },
      );
    });
    const touched = () =>
      host.page.evaluate(
        () => (window as unknown as { readonly touched: string[] }).touched.splice(0).length,
      );
    await host.show();
    expect(await touched()).toBe(0);
    const moved = plan.cribs.map((c) => (c.name === 'A' ? { ...c, at: { x: c.at.x + 0.05, y: c.at.y } } : c));
    await host.send(messageFor({ ...plan, cribs: moved }, analysis, firstChoice));
    await host.next('drawn');
    const after = await touched();
    expect(after).toBeGreaterThan(0);
    expect(after).toBeLessThan((await host.page.locator('svg.cw *').count()) / 4);
    await host.page.context().close();
  });

  it('goes to the line of what is clicked, and lights what the cursor is on', async () => {
    const host = await opened();
    await shape(host, 'crib/C').click();
    expect(await host.next('go to')).toMatchObject({ uri: testUri, element: 'crib/C' });
    await host.send({ kind: 'light', uri: testUri, element: 'strut/S1' });
    await host.page.waitForSelector('[data-element="strut/S1"][data-lit]');
    expect(await host.page.locator('[data-element="crib/C"][data-lit]').count()).toBe(0);
    await host.page.context().close();
  });

  it('reaches every shape with keys, and goes to its line with Enter', async () => {
    const host = await opened();
    const names = await host.page.locator('svg g[role="graphics-object"] > title').allTextContents();
    expect(names.length).toBeGreaterThan(15);
    expect(await host.page.locator('svg g[role="graphics-object"][tabindex="0"]').count()).toBe(1);
    await host.page.locator('svg g[tabindex="0"]').focus();
    const focused = () =>
      host.page.evaluate(() => document.activeElement?.querySelector('title')?.textContent);
    await host.page.keyboard.press('Home');
    const seen = [await focused()];
    for (let i = 1; i < names.length; i++) {
      await host.page.keyboard.press('PageDown');
      seen.push(await focused());
    }
    expect(seen).toEqual(names);
    await host.page.keyboard.press('PageDown');
    expect(await focused()).toBe(names.at(-1));
    await host.page.keyboard.press('PageUp');
    expect(await focused()).toBe(names.at(-2));
    // Arrow keys go the way that they point.
    await shape(host, 'crib/A').focus();
    const from = await shape(host, 'crib/A').boundingBox();
    await host.page.keyboard.press('ArrowRight');
    const to = await host.page.evaluate(() => document.activeElement?.getBoundingClientRect().x ?? 0);
    expect(to).toBeGreaterThan(from?.x ?? Infinity);
    await host.page.keyboard.press('End');
    const last = await host.page.evaluate(() => document.activeElement?.getAttribute('data-element'));
    await host.page.keyboard.press('Enter');
    expect(await host.next('go to')).toMatchObject({ element: last });
    await host.page.context().close();
  });

  it('adds and takes courses with keys, on cribs alone', async () => {
    const host = await opened();
    await shape(host, 'crib/A').focus();
    await host.page.keyboard.press('Alt+ArrowUp');
    expect(await host.next('courses')).toMatchObject({ element: 'crib/A', by: 1, version: 1 });
    await host.page.keyboard.press('Alt+ArrowDown');
    expect(await host.next('courses')).toMatchObject({ by: -1 });
    await shape(host, 'strut/S1').focus();
    await host.page.keyboard.press('Alt+ArrowUp');
    expect(host.heard.filter((m) => m.kind === 'courses')).toHaveLength(2);
    await host.page.context().close();
  });

  it('drags a crib to a joist and asks for the move once, in plan meters', async () => {
    const host = await opened();
    const [scene] = scenesFor(plan, analysis, firstChoice);
    const box = await shape(host, 'crib/A').boundingBox();
    const width = await host.page.locator('svg.cw').evaluate((svg) => svg.clientWidth);
    const crib = plan.cribs.find((c) => c.id === 'crib/A');
    if (box === null || scene?.frame === undefined || crib === undefined) throw new Error('no crib to drag');
    const pixels = (width / scene.width) * scene.frame.across.scale;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await host.page.mouse.move(x, y);
    await host.page.mouse.down();
    await host.page.mouse.move(x + pixels / 2, y, { steps: 4 });
    await host.page.mouse.move(x + pixels, y, { steps: 4 });
    expect(await host.page.locator('[role=status]').textContent()).toContain('crib A:');
    await host.page.mouse.up();
    const move = await host.next('move');
    expect(move).toMatchObject({ element: 'crib/A', moves: 'center', uri: testUri, version: 1 });
    expect(move.to.y).toBeUndefined();
    // Joists stand every foot from 4 ft on.
    const feet = (move.to.x ?? 0) / 0.3048;
    expect(Math.abs(feet - Math.round(feet))).toBeLessThan(1e-6);
    expect(Math.abs((move.to.x ?? 0) - crib.at.x - 1)).toBeLessThan(0.2);
    expect(host.heard.filter((m) => m.kind === 'move')).toHaveLength(1);
    expect(host.heard.filter((m) => m.kind === 'go to')).toHaveLength(0);
    await host.page.context().close();
  });

  it('lets go of a drag with Escape, and says why the main vehicle stays', async () => {
    const host = await opened();
    const box = await shape(host, 'crib/B').boundingBox();
    if (box === null) throw new Error('no crib');
    await host.page.mouse.move(box.x + 4, box.y + 4);
    await host.page.mouse.down();
    await host.page.mouse.move(box.x + 60, box.y + 4, { steps: 3 });
    await host.page.keyboard.press('Escape');
    await host.page.mouse.up();
    expect(await host.page.locator('[data-shifted]').count()).toBe(0);
    const trailer = await shape(host, 'vehicle/trailer').boundingBox();
    if (trailer === null) throw new Error('no trailer');
    const [x, y] = [trailer.x + 20, trailer.y + trailer.height / 2 - 8];
    await host.page.mouse.move(x, y);
    await host.page.mouse.down();
    await host.page.mouse.move(x + 40, y, { steps: 3 });
    await host.page.mouse.up();
    expect(await host.page.locator('[role=status]').textContent()).toContain('measured from this vehicle');
    expect(host.heard.filter((m) => m.kind === 'move')).toHaveLength(0);
    await host.page.context().close();
  });

  it('steps through the stages with slider, keys and play, and asks what if', async () => {
    const host = await opened();
    await host.page.getByRole('slider', { name: 'Stage' }).focus();
    await host.page.keyboard.press('Home');
    expect((await host.next('choose')).choice).toMatchObject({ stage: 0 });
    await host.next('drawn');
    await shape(host, 'vehicle/trailer').focus();
    await host.page.keyboard.press('.');
    expect((await host.next('choose')).choice).toMatchObject({ stage: 1 });
    await host.next('drawn');
    await host.page.getByRole('button', { name: 'Play' }).click();
    expect((await host.next('choose')).choice).toMatchObject({ stage: 2 });
    await host.next('drawn');
    await host.page.getByRole('button', { name: 'Stop' }).click();
    await host.page.getByRole('button', { name: 'Play' }).waitFor();
    // On a slow machine the next stage may have come before the stop.
    const stage = host.heard.flatMap((m) => (m.kind === 'choose' ? [m.choice.stage] : [])).at(-1);
    const loss = (stage === undefined ? analysis.stages.at(-1) : analysis.stages[stage])?.losses[0];
    await host.page.getByLabel('What if').selectOption({ label: english(loss?.title) ?? '' });
    while ((await host.next('choose')).choice.lost !== loss?.id);
    await host.next('drawn');
    expect(await host.page.locator('svg.cw').textContent()).toContain('how the loads move');
    await host.page.context().close();
  });

  it('moves nothing for a reader who asked for less motion', async () => {
    const host = await opened();
    await host.send(messageFor(plan, analysis, { ...firstChoice, stage: 3 }));
    await host.next('drawn');
    const motion = () =>
      host.page
        .locator('svg.cw circle.t-load')
        .first()
        .evaluate((mark) => getComputedStyle(mark).transitionDuration);
    expect(await motion()).not.toBe('0s');
    await host.page.emulateMedia({ reducedMotion: 'reduce' });
    expect(await motion()).toBe('0s');
    const moving = await host.page.evaluate(() => document.getAnimations().length);
    expect(moving).toBe(0);
    await host.page.context().close();
  });

  it('goes through the views as tabs', async () => {
    const host = await opened();
    await host.page.getByRole('tab', { name: 'Top' }).focus();
    await host.page.keyboard.press('ArrowRight');
    expect((await host.next('choose')).choice).toMatchObject({ view: 'side' });
    await host.next('drawn');
    expect(await host.page.locator('svg.cw').getAttribute('data-view')).toBe('side');
    await host.page.getByRole('tab', { name: 'Crib' }).click();
    await host.next('drawn');
    await host.page.getByRole('combobox', { name: /^crib/ }).selectOption({ label: 'C1' });
    expect((await host.next('choose')).choice).toMatchObject({ view: 'crib', subject: 'crib/C1' });
    await host.page.context().close();
  });

  it('keeps the last good drawing, and says so', async () => {
    const host = await opened();
    await host.send({
      ...messageFor(plan, analysis, firstChoice),
      scenes: [],
      version: 2,
      stale: 'The text has errors.',
    });
    await host.page.getByText('The text has errors.').waitFor();
    expect(await shape(host, 'crib/A').count()).toBe(1);
    expect(await host.page.locator('.caution').isVisible()).toBe(true);
    await host.show({ version: 3 });
    expect(await host.page.getByText('The text has errors.').count()).toBe(0);
    await host.page.context().close();
  });

  it('redraws only what changed, and keeps the focus', async () => {
    const host = await opened();
    await shape(host, 'crib/B').focus();
    await host.page.evaluate(() => {
      const touched: string[] = [];
      Object.assign(window, { touched });
      new MutationObserver((list) => {
        for (const change of list) {
          const at = change.target instanceof Element ? change.target : change.target.parentElement;
          touched.push(at?.closest('svg > g')?.getAttribute('data-key') ?? 'svg');
        }
      }).observe(document.querySelector('svg.cw') as Element, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
        attributeFilter: ['points', 'x', 'y', 'd', 'class', 'cx', 'cy'],
      });
    });
    const moved = {
      ...plan,
      cribs: plan.cribs.map((c) => (c.id === 'crib/A' ? { ...c, at: { x: c.at.x - 0.1, y: c.at.y } } : c)),
    };
    const [scene] = scenesFor(moved, analysis, firstChoice);
    if (scene === undefined) throw new Error('nothing was drawn');
    await host.show({ scenes: [scene], version: 2 });
    const touched = new Set(
      await host.page.evaluate(() => (window as unknown as { touched: string[] }).touched),
    );
    expect(touched).toContain('crib/A');
    for (const still of ['crib/B', 'crib/D', 'strut/S4', 'vehicle/trailer', 'caution', 'heading'])
      expect(touched).not.toContain(still);
    expect(await host.page.evaluate(() => document.activeElement?.getAttribute('data-element'))).toBe(
      'crib/B',
    );
    await host.page.context().close();
  });

  it('keeps zoom and place in its state, and comes back with them', async () => {
    const host = await opened();
    await host.page.getByRole('button', { name: 'Zoom in' }).click();
    await host.page.getByRole('button', { name: 'Zoom in' }).click();
    await host.page.locator('#drawing').evaluate((box) => box.scrollTo(120, 90));
    await host.page.waitForFunction(
      () => (window as unknown as { keptState?: PanelState }).keptState?.pan.x === 120,
    );
    const state = await host.page.evaluate(() => (window as unknown as { keptState: PanelState }).keptState);
    expect(state).toMatchObject({ uri: testUri, zoom: 1.56, choice: { view: 'top' } });
    await host.page.context().close();
    const again = await opened({ state });
    await again.page.waitForFunction(() => document.querySelector('#drawing')?.scrollLeft === 120);
    await again.page.context().close();
  });

  it('turns the layout in space, loaded only when asked for', async () => {
    const host = await openPanel(browserForSpace, plan, analysis);
    await host.show();
    const asked: string[] = [];
    host.page.on('request', (r) => asked.push(r.url()));
    await host.page.getByRole('tab', { name: '3D' }).click();
    await host.next('drawn');
    expect(asked).toEqual([]);
    await host.page.getByRole('button', { name: 'Rotate' }).click();
    await host.page.locator('.space-canvas canvas').waitFor();
    expect(asked.some((u) => u.includes('space-view'))).toBe(true);
    const colors = () =>
      host.page.locator('.space-canvas canvas').evaluate(async (canvas) => {
        await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        const copy = document.createElement('canvas');
        [copy.width, copy.height] = [80, 60];
        const context = copy.getContext('2d');
        context?.drawImage(canvas as HTMLCanvasElement, 0, 0, 80, 60);
        return [...new Set(context?.getImageData(0, 0, 80, 60).data)].length;
      });
    expect(await colors()).toBeGreaterThan(20);
    await host.page.getByRole('button', { name: 'Without perspective' }).click();
    await host.page.getByRole('button', { name: 'From above' }).click();
    expect(await colors()).toBeGreaterThan(20);
    expect(host.errors).toEqual([]);
    await host.page.context().close();
  });
});

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const themes: readonly Theme[] = ['light', 'dark', 'high-contrast', 'high-contrast-light'];

describe.each(themes)('in the theme %s', (theme) => {
  it('has no serious finding of axe-core, in any view', async () => {
    const host = await opened({ theme });
    await host.page.evaluate(axe);
    for (const view of [
      'Top',
      'Side',
      'End',
      'Crib',
      'Strut',
      'Heights',
      'Utilization',
      'Timeline',
      'Ground',
      '3D',
    ]) {
      await host.page.getByRole('tab', { name: view, exact: true }).click();
      await host.next('drawn');
      const serious = await host.page.evaluate(async () => {
        const { violations } = await (
          window as unknown as {
            axe: {
              run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }>;
            };
          }
        ).axe.run();
        return violations
          .filter((v) => v.impact === 'serious' || v.impact === 'critical')
          .map((v) => `${v.id}: ${v.nodes[0]?.html.slice(0, 160)}`);
      });
      expect([view, ...serious]).toEqual([view]);
    }
    await host.page.context().close();
  });
});

it('leaves most of a narrow panel to the drawing', async () => {
  const host = await openPanel(browser, plan, analysis, { width: 500, height: 800 });
  await host.show();
  const [box, wide] = await host.page.evaluate(() => [
    document.querySelector('#drawing')?.clientHeight ?? 0,
    document.documentElement.scrollWidth,
  ]);
  expect(box).toBeGreaterThan(0.65 * 800);
  expect(wide).toBeLessThanOrEqual(500);
  await host.page.context().close();
});

it.each([400, 600, 1000])(
  'shows all that is under “More” in a panel %i px wide',
  async (width) => {
    const host = await openPanel(browser, plan, analysis, { width, height: 700 });
    await host.show();
    await host.page.getByText('More', { exact: true }).click();
    const box = await host.page.locator('.sheet-of-more').boundingBox();
    if (box === null) throw new Error('nothing is under “More”');
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(width);
    expect(box.y + box.height).toBeLessThanOrEqual(700);
    await host.page.context().close();
  },
  60_000,
);

it.each([360, 480])('shows the whole drawing and every view in a panel %i px wide', async (width) => {
  const host = await openPanel(browser, plan, analysis, { width, height: 800 });
  await host.show();
  const [drawing, shown] = await host.page.evaluate(() => {
    const box = document.querySelector('#drawing');
    return [box?.scrollWidth ?? 0, box?.clientWidth ?? 0];
  });
  expect(drawing).toBeLessThanOrEqual(shown);
  const tabs = await host.page.evaluate(() =>
    [...document.querySelectorAll('[role="tab"]')].map((tab) => tab.getBoundingClientRect().right),
  );
  expect(tabs.length).toBeGreaterThan(5);
  for (const right of tabs) expect(right).toBeLessThanOrEqual(width);
  await host.page.context().close();
});

it('names what is unsafe over its shape in the view that turns, and no two names over each other', async () => {
  const { tallCrib } = samplePlans;
  if (tallCrib === undefined) throw new Error('the sample plan is gone');
  const host = await openPanel(browserForSpace, tallCrib, analyze(tallCrib), { width: 700, height: 700 });
  await host.show();
  await host.page.getByRole('tab', { name: '3D', exact: true }).click();
  await host.next('drawn');
  await host.page.getByRole('button', { name: 'Rotate' }).click();
  await host.page.locator('.space-label.danger', { hasText: '▲ A' }).waitFor({ state: 'visible' });
  const boxes = await host.page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.space-label')]
      .filter((tag) => tag.style.visibility !== 'hidden')
      .map((tag) => tag.getBoundingClientRect())
      .map(({ left, right, top, bottom }) => ({ left, right, top, bottom })),
  );
  expect(boxes.length).toBeGreaterThan(3);
  // Places are whole pixels.
  const over = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (b) => a.left + 1 < b.right && b.left + 1 < a.right && a.top + 1 < b.bottom && b.top + 1 < a.bottom,
      ),
  );
  expect(over).toEqual([]);
  await host.page.context().close();
});
