import { bundleSuite } from './bundle-suite.js';
import { firstHour } from './first-hour.js';
import { runInBrowser } from './run-in-browser.js';
import { desktopCode, runOnDesktop } from './run-on-desktop.js';
import { tell } from './tell.js';
import { root } from './vscode-server.js';

// The desktop program where a path to it is given; else a VS Code served to a browser. Never neither.
const suite = await bundleSuite('node');
const code = desktopCode();
const inside = code ? await runOnDesktop(code, root, suite) : await runInBrowser(root, suite);
const outside = await firstHour(root);
tell('editor', {
  passed: inside.passed + outside.passed,
  failed: inside.failed + outside.failed,
  pending: inside.pending,
  lines: [...inside.lines, ...outside.lines],
});
