import { firstChoice } from '@cribwright/drawing';
import type { Analysis } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import type { Page } from 'playwright-core';
import { startChromium } from '../visual/chromium.js';
import { messageFor, openPanel } from '../visual/fake-host.js';

export interface Analyzed {
  readonly plan: Plan;
  readonly analysis: Analysis;
}

/** Least times of many, ms. */
export interface PanelTimes {
  /** From the message with the new drawing to the second frame after it; a frame comes every 17 ms at most. */
  readonly frames: number;
  /** What the page itself works in that time: its scripts, styles, layout and painting. */
  readonly work: number;
}

const turns = 20;

/** Between two changes, so that the frames of the last one are over, ms. */
const rest = 250;

/** How long the panel takes in Chromium to go from the plan from above of `one` to that of `other`, and back. */
export async function panelTimes(one: Analyzed, other: Analyzed): Promise<PanelTimes> {
  const browser = await startChromium(true);
  try {
    const host = await openPanel(browser, one.plan, one.analysis);
    await host.show();
    const worked = await workClock(host.page);
    const messages = [one, other].map(({ plan, analysis }) => messageFor(plan, analysis, firstChoice));
    await host.page.evaluate((sent) => Object.assign(window, { sent }), messages);
    let [frames, work] = [Infinity, Infinity];
    for (let turn = 1; turn <= turns; turn++) {
      await host.page.waitForTimeout(rest);
      const before = await worked();
      frames = Math.min(frames, await toSecondFrame(host.page, turn % 2));
      work = Math.min(work, (await worked()) - before);
    }
    if (host.errors.length > 0) throw new Error(host.errors.join('; '));
    return { frames, work };
  } finally {
    await browser.close();
  }
}

/** Sends one of the messages that the page holds, and waits for two frames. */
const toSecondFrame = (page: Page, which: number): Promise<number> =>
  page.evaluate(async (index) => {
    const { sent } = window as unknown as { readonly sent: readonly unknown[] };
    const start = performance.now();
    window.postMessage(sent[index], '*');
    await new Promise((heard) => window.addEventListener('message', heard, { once: true }));
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
    return performance.now() - start;
  }, which);

/** How long the page has worked so far, ms, as the browser counts it. */
async function workClock(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    const tasks = metrics.find((m) => m.name === 'TaskDuration');
    if (tasks === undefined) throw new Error('The browser does not say how long its page worked.');
    return tasks.value * 1000;
  };
}
