import type { Page } from 'playwright-core';
import { handsServer } from './hands-server.js';
import { panelHands } from './panel-hands.js';
import type { Tally } from './suite/lines.js';

/**
 * Opens an editor in a page, lets it run its suite, and gives the tally. Rejects when the suite did not report.
 *
 * @param open starts the editor and gives its address; it is told where the suite finds its hands
 */
export const runSuite = async (page: Page, open: (hands: string) => Promise<string>): Promise<Tally> => {
  let tally: Tally | undefined;
  const acts = panelHands(page);
  const hands = await handsServer(async (name, given) => {
    if (name === 'report') {
      tally = (given as { tally: Tally }).tally;
      return undefined;
    }
    const act = acts[name];
    if (!act) throw new Error(`No hand can ${name}.`);
    return act(given as Parameters<typeof act>[0]);
  });
  const log: string[] = [];
  let end: (code: number) => void = () => undefined;
  const ended = new Promise<number>((resolve) => {
    end = resolve;
  });
  page.on('pageerror', (error) => log.push(`page: ${error.message}`));
  try {
    // The page has both before it goes anywhere: one that is still being set up when the page moves on is lost with it.
    await page.exposeFunction('codeAutomationLog', (type: string, args: unknown[]) => {
      log.push(`${type}: ${args.map(String).join(' ')}`);
    });
    await page.exposeFunction('codeAutomationExit', (code: number) => end(code));
    await page.goto(await open(hands.address));
    const code = await Promise.race([ended, late(page, log)]);
    if (tally === undefined) throw new Error(`The suite did not report.\n${log.slice(-30).join('\n')}`);
    if (code !== 0 && tally.failed === 0) throw new Error(`The host ended with ${code}.\n${log.join('\n')}`);
    return tally;
  } finally {
    hands.close();
  }
};

const late = async (page: Page, log: readonly string[]): Promise<never> => {
  await new Promise((late) => setTimeout(late, 900_000).unref());
  await page.screenshot({ path: 'tests/host/out/late.png' });
  throw new Error(
    `The suite did not end in time. See tests/host/out/late.png.\n${log.slice(-30).join('\n')}`,
  );
};
