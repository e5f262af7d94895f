import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { bundleSuite } from './bundle-suite.js';
import { firstHour } from './first-hour.js';
import { installed } from './installed.js';
import { runInBrowser } from './run-in-browser.js';
import { desktopCode, runOnDesktop } from './run-on-desktop.js';
import { tell } from './tell.js';
import { root } from './vscode-server.js';

/** `--only=typing,panel` runs these files of the suite alone, with the extension as bundled and not as installed. */
const only = process.argv.flatMap((word) => /^--only=(.*)$/.exec(word)?.[1]?.split(',') ?? []);
const suite = await bundleSuite('node', only);
if (only.length > 0) {
  execFileSync(process.execPath, [join(root, 'packages/extension/build/bundle.mjs')], { stdio: 'inherit' });
  tell('editor', await runInBrowser(root, suite));
} else {
  // The desktop program where a path to it is given; else a VS Code served to a browser, with the package installed as
  // a user installs it. Never neither.
  const code = desktopCode();
  const { data, empty } = installed();
  const inside = code ? await runOnDesktop(code, root, suite) : await runInBrowser(empty, suite, data);
  const outside = await firstHour(empty, data);
  tell('editor', {
    passed: inside.passed + outside.passed,
    failed: inside.failed + outside.failed,
    pending: inside.pending,
    lines: [...inside.lines, ...outside.lines],
  });
}
