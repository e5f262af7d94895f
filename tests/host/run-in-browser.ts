import { launchChromium } from './chromium.js';
import { runSuite } from './run-suite.js';
import { serve } from './serve.js';
import type { Tally } from './suite/lines.js';
import { workspaceCopy } from './workspace.js';

/**
 * Runs a suite in a VS Code that is served to a browser: Node extension host, real workbench, real webviews.
 *
 * @param extension folder of the extension to test
 * @param suite file that exports `run()`
 * @param data folder of the server's own files, where extensions are installed
 */
export const runInBrowser = async (extension: string, suite: string, data?: string): Promise<Tally> => {
  const served = await serve({ forSuite: true, ...(data === undefined ? {} : { data }) });
  const browser = await launchChromium();
  try {
    const page = await browser.newPage({
      viewport: { width: 1500, height: 950 },
    });
    return await runSuite(page, async (hands) => {
      const remote = (path: string) => `vscode-remote://${served.origin}${path}`;
      const payload = [
        ['extensionDevelopmentPath', remote(extension)],
        ['extensionTestsPath', remote(suite)],
        ['skipWelcome', 'true'],
      ];
      const query = `folder=${workspaceCopy(hands)}&payload=${encodeURIComponent(JSON.stringify(payload))}`;
      return `http://${served.origin}/?${query}`;
    });
  } finally {
    await browser.close();
    served.stop();
  }
};
