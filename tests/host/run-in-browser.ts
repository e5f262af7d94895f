import { launchChromium } from './chromium.js';
import { handsServer } from './hands-server.js';
import { panelHands } from './panel-hands.js';
import { serve } from './serve.js';
import type { Tally } from './suite/lines.js';
import { workspaceCopy } from './workspace.js';

/**
 * Runs a suite in a VS Code that is served to a browser: Node extension host, real workbench, real webviews.
 *
 * @param extension folder of the extension to test
 * @param suite file that exports `run()`
 */
export const runInBrowser = async (extension: string, suite: string): Promise<Tally> => {
  const served = await serve();
  const browser = await launchChromium();
  let tally: Tally | undefined;
  try {
    const page = await browser.newPage({ viewport: { width: 1500, height: 950 } });
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
    const ended = new Promise<number>((end) => {
      void page.exposeFunction('codeAutomationLog', (type: string, args: unknown[]) => {
        const line = args.map(String).join(' ');
        log.push(`${type}: ${line}`);
      });
      void page.exposeFunction('codeAutomationExit', (code: number) => end(code));
    });
    const remote = (path: string) => `vscode-remote://${served.origin}${path}`;
    const payload = [
      ['extensionDevelopmentPath', remote(extension)],
      ['extensionTestsPath', remote(suite)],
      ['skipWelcome', 'true'],
    ];
    const folder = workspaceCopy(hands.address);
    await page.goto(
      `http://${served.origin}/?folder=${folder}&payload=${encodeURIComponent(JSON.stringify(payload))}`,
    );
    const code = await Promise.race([ended, late(page, 300_000)]);
    hands.close();
    if (tally === undefined) throw new Error(`The suite did not report.\n${log.slice(-30).join('\n')}`);
    if (code !== 0 && tally.failed === 0) throw new Error(`The host ended with ${code}.\n${log.join('\n')}`);
    return tally;
  } finally {
    await browser.close();
    served.stop();
  }
};

const late = async (
  page: { screenshot: (o: { path: string }) => Promise<unknown> },
  ms: number,
): Promise<never> => {
  await new Promise((late) => setTimeout(late, ms).unref());
  await page.screenshot({ path: 'tests/host/out/late.png' });
  throw new Error('The suite did not end in time. See tests/host/out/late.png.');
};
