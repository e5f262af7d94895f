import { bundleSuite } from '../host/bundle-suite.js';
import { runSuite } from '../host/run-suite.js';
import { tell } from '../host/tell.js';
import { root } from '../host/vscode-server.js';
import { workspaceCopy } from '../host/workspace.js';
import { launchForWebviews, serveWeb } from './web-host.js';

/** `--only=typing,panel` runs these files of the suite alone, with the extension as it was bundled last. */
const only = process.argv.flatMap((word) => /^--only=(.*)$/.exec(word)?.[1]?.split(',') ?? []);
const suite = await bundleSuite('web', only);
const browser = await launchForWebviews();
let stop = (): void => undefined;
try {
  const page = await browser.newPage();
  const tally = await runSuite(page, async (hands) => {
    const served = await serveWeb(root, suite, workspaceCopy(hands));
    stop = served.stop;
    return served.address;
  });
  await browser.close();
  tell('editor in a browser', tally);
} finally {
  await browser.close();
  stop();
}
