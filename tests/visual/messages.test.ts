import { drawScene, firstChoice, leaveOut } from '@cribwright/drawing';
import { unchecked } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { samplePlans } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startChromium } from './chromium.js';
import { messageFor, openPanel, testUri } from './fake-host.js';

const { trailerOnCar: plan } = samplePlans;
if (plan === undefined) throw new Error('the sample plan is gone');
const analysis = analyze(plan, { push: true });
const later: Plan = {
  ...plan,
  cribs: plan.cribs.map((c) => (c.id === 'crib/A' ? { ...c, at: { x: c.at.x - 0.1, y: c.at.y } } : c)),
};
const scenes = [plan, later].map((p) => drawScene(p, analysis, firstChoice));

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium(true);
});
afterAll(() => browser?.close());

const shapes = (page: Page) => page.locator('svg.cw > g').evaluateAll((all) => all.map((g) => g.outerHTML));

describe('what the panel is sent', () => {
  it('may leave out what did not change, and is drawn all the same', async () => {
    const [one, two] = scenes;
    if (one === undefined || two === undefined) throw new Error('nothing was drawn');
    const whole = await openPanel(browser, later, analysis);
    await whole.show();
    const wanted = await shapes(whole.page);
    await whole.page.context().close();

    const host = await openPanel(browser, plan, analysis);
    await host.show({ turn: 1 });
    const { sent } = leaveOut(one, two);
    expect(sent.items.filter((i) => i.kind === 'kept').length).toBeGreaterThan(10);
    await host.send({ ...messageFor(later, analysis, firstChoice), scenes: [sent], turn: 2, after: 1 });
    await host.next('drawn');
    expect(await shapes(host.page)).toEqual(wanted);

    // Built upon a drawing that the panel does not have: it keeps what it has and asks for the whole.
    await host.send({ ...messageFor(later, analysis, firstChoice), scenes: [sent], turn: 8, after: 7 });
    await host.next('ready');
    expect(await shapes(host.page)).toEqual(wanted);
    expect(host.errors).toEqual([]);
    await host.page.context().close();
  });

  it('says of a drawing made before the checks that it is not checked, and keeps every tool', async () => {
    const host = await openPanel(browser, plan, analysis);
    await host.show();
    const tools = () => host.page.locator('.tools').evaluate((all) => all.innerHTML);
    const before = await tools();
    await host.send({ ...messageFor(later, unchecked(later), firstChoice), version: 2 });
    await host.next('drawn');
    expect(await host.page.locator('.tally').textContent()).toContain('Not checked yet');
    expect(await host.page.locator('svg.cw [data-key="heading"]').textContent()).toContain('not checked yet');
    expect(await host.page.locator('[class*="worst-"]').count()).toBe(0);
    expect(await host.page.locator('svg.cw').textContent()).not.toContain('%');
    expect(await host.page.locator('.caution').isVisible()).toBe(true);
    expect(await tools()).toBe(before);
    await host.send({ ...messageFor(later, analyze(later), firstChoice), version: 2 });
    await host.next('drawn');
    expect(await host.page.locator('.tally').textContent()).not.toContain('Not checked yet');
    expect(await host.page.locator('svg.cw').textContent()).not.toContain('not checked yet');
    expect(host.heard.filter((m) => m.kind === 'ready')).toHaveLength(1);
    expect(host.errors).toEqual([]);
    await host.page.context().close();
  });

  it('names the file and the version that it drew', async () => {
    const host = await openPanel(browser, plan, unchecked(plan));
    await host.show({ version: 5 });
    const drawn = host.heard.filter((m) => m.kind === 'drawn');
    expect(drawn).toEqual([
      {
        kind: 'drawn',
        uri: testUri,
        version: 5,
        words: expect.stringContaining('The checks have not run yet'),
        unchecked: true,
      },
    ]);
    await host.page.context().close();
  });
});
