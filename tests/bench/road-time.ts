import type { AnalysisChangedParams } from '@cribwright/server/protocol';
import type { AnalysisReply } from '@cribwright/workspace';
import type { Page } from 'playwright-core';
import { type Drawable, joined } from '../../packages/extension/src/features/preview/last-good.js';
import { firstLook, showMessage } from '../../packages/extension/src/features/preview/show-message.js';
import { Turns } from '../../packages/extension/src/features/preview/turns.js';
import { startServer } from '../protocol/client.js';
import { startChromium } from '../visual/chromium.js';
import { openPanel } from '../visual/fake-host.js';
import { largePlanText } from './large-plan-text.js';

/** From an edit of the text to what is seen, ms: the quickest of many, and the parts it is made of. */
export interface RoadTimes {
  /** From the edit to the message of the language server that says how the plan lies now. */
  readonly server: number;
  /** The drawing made of it. */
  readonly scene: number;
  /** What is left of the drawing to be sent, as text. */
  readonly message: number;
  /** From there until the panel has the message. */
  readonly arrives: number;
  /** What the page then works until the frame that shows it is painted, and waits for that frame. */
  readonly paint: number;
  readonly whole: number;
  /** The same to the frame after that one, which nobody doubts. */
  readonly second: number;
  /** From the edit to the drawing that has the checks in it. */
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
    // In two goes where a check is long, as it ships.
    await server.initialize({ initializationOptions: {} });
    server.open(uri, largePlanText());
    const first = await server.request<AnalysisReply>('cribwright/analysis', { uri });
    await done(server, 1);
    let drawable: Drawable = joined(undefined, first);
    const [reply] = first.plans;
    if (reply === undefined) throw new Error('The plan of very many cribs cannot be read.');
    const host = await openPanel(browser, reply.plan, reply.analysis);
    const sent = new Turns();
    const draw = (next: AnalysisReply) => {
      drawable = joined(drawable, next);
      return showMessage(drawable, firstLook, undefined);
    };
    const written = (drawing: ReturnType<typeof draw>) => JSON.stringify(sent.next(drawing));
    await shown(host.page, written(draw(first)));

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
      const drawing = draw(layout.params as AnalysisReply);
      const drawn = performance.now();
      const message = written(drawing);
      const ready = performance.now();
      const page = await shown(host.page, message);
      // What does not pass in the page passes on the way to it.
      const arrives = performance.now() - ready - page.second;
      await done(server, version);
      await shown(
        host.page,
        written(draw(await server.request<AnalysisReply>('cribwright/analysis', { uri }))),
      );
      measured.push({
        server: laid - start,
        scene: drawn - laid,
        message: ready - drawn,
        arrives,
        paint: page.paint,
        whole: ready - start + arrives + page.paint,
        second: ready - start + arrives + page.second,
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

/** Gives a message to the panel. Times from when the page has it: to its frame painted, to the next frame. */
const shown = (page: Page, message: string): Promise<{ readonly paint: number; readonly second: number }> =>
  page.evaluate(async (text) => {
    const start = performance.now();
    window.postMessage(JSON.parse(text), '*');
    await new Promise((heard) => window.addEventListener('message', heard, { once: true }));
    await new Promise(requestAnimationFrame);
    // What was asked of this frame is painted before any message is heard.
    await new Promise((painted) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = painted;
      port2.postMessage(undefined);
    });
    const paint = performance.now() - start;
    await new Promise(requestAnimationFrame);
    return { paint, second: performance.now() - start };
  }, message);
