import type { AnalysisChangedParams, AnalysisReply } from '@cribwright/language/protocol';
import type { Page } from 'playwright-core';
import { type Drawable, joined } from '../../packages/extension/src/features/preview/last-good.js';
import { firstLook, showMessage } from '../../packages/extension/src/features/preview/show-message.js';
import { Turns } from '../../packages/extension/src/features/preview/turns.js';
import { startServer } from '../protocol/client.js';
import { startChromium } from '../visual/chromium.js';
import { openPanel } from '../visual/fake-host.js';
import { largePlanText } from './large-plan-text.js';

/** From a key pressed to what is seen, ms: the quickest of many edits, and the parts it is made of. */
export interface RoadTimes {
  /** From the edit to the message of the language server that says how the plan lies now. */
  readonly server: number;
  /** From there to the message for the panel. */
  readonly drawing: number;
  /** From there to the second frame of the panel. */
  readonly panel: number;
  readonly whole: number;
  /** To the drawing that has the checks in it, ready for the panel. */
  readonly checked: number;
}

const uri = 'file:///alder-ridge/large.crib';
const turns = 15;

/** Between two edits, ms. */
const rest = 300;

/**
 * Edits the text of a plan with very many cribs, and follows the edit to the glass: through a real language server,
 * through what the extension does with its answer, to the panel in Chromium.
 */
export async function roadTimes(): Promise<RoadTimes> {
  const server = await startServer();
  const browser = await startChromium(true);
  try {
    await server.initialize();
    server.open(uri, largePlanText());
    const first = await server.request<AnalysisReply>('cribwright/analysis', { uri });
    await done(server, 1);
    let drawable: Drawable = joined(undefined, first);
    const [reply] = first.plans;
    if (reply === undefined) throw new Error('The plan of very many cribs cannot be read.');
    const host = await openPanel(browser, reply.plan, reply.analysis);
    const sent = new Turns();
    const message = (next: AnalysisReply) => {
      drawable = joined(drawable, next);
      return JSON.stringify(sent.next(showMessage(drawable, firstLook, undefined)));
    };
    await shown(host.page, message(first));

    const measured: RoadTimes[] = [];
    for (let version = 2; version < turns + 2; version++) {
      await host.page.waitForTimeout(rest);
      const { line, text } = edited(version);
      const start = performance.now();
      server.notify('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [
          {
            range: { start: { line, character: 0 }, end: { line, character: text.before.length } },
            text: text.now,
          },
        ],
      });
      const layout = await server.message('the layout', (m) => {
        const params = m.params as AnalysisReply | undefined;
        return m.method === 'cribwright/layout' && params?.version === version;
      });
      const laid = performance.now();
      const toPanel = message(layout.params as AnalysisReply);
      const ready = performance.now();
      await shown(host.page, toPanel);
      const seen = performance.now();
      await done(server, version);
      await shown(host.page, message(await server.request<AnalysisReply>('cribwright/analysis', { uri })));
      measured.push({
        server: laid - start,
        drawing: ready - laid,
        panel: seen - ready,
        whole: seen - start,
        checked: performance.now() - start,
      });
    }
    if (host.errors.length > 0) throw new Error(host.errors.join('; '));
    const [quickest] = measured.sort((a, b) => a.whole - b.whole);
    if (quickest === undefined) throw new Error('No edit was followed.');
    return quickest;
  } finally {
    await browser.close();
    await server.stop();
  }
}

/** The line that the edit of one version changes: it moves one crib by a hundredth of an inch. */
function edited(version: number) {
  const [before, now] = [version - 1, version].map((v) => largePlanText(v).split('\n'));
  const line = now?.findIndex((text, i) => text !== before?.[i]) ?? -1;
  return { line, text: { before: before?.[line] ?? '', now: now?.[line] ?? '' } };
}

/** Waits until all checks of one version of the text are done but for the push. */
const done = (server: Awaited<ReturnType<typeof startServer>>, version: number) =>
  server.message('the checks', (m) => {
    const params = m.params as AnalysisChangedParams | undefined;
    return (
      m.method === 'cribwright/analysisChanged' && params?.version === version && params.loads === undefined
    );
  });

/** Gives a message to the panel, and waits for two frames. */
const shown = (page: Page, message: string): Promise<void> =>
  page.evaluate(async (text) => {
    window.postMessage(JSON.parse(text), '*');
    await new Promise((heard) => window.addEventListener('message', heard, { once: true }));
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
  }, message);
