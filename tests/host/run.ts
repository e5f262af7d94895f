import { bundleSuite } from './bundle-suite.js';
import { runInBrowser } from './run-in-browser.js';
import { root } from './vscode-server.js';

const tally = await runInBrowser(root.replace(/\/$/, ''), await bundleSuite('node'));
console.log(tally.lines.join('\n'));
console.log(`host: ${tally.passed} passed, ${tally.failed} failed`);
process.exit(tally.failed + tally.pending > 0 || tally.passed === 0 ? 1 : 0);
