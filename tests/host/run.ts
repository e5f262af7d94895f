import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { asAUser } from './as-a-user.js';
import { bundleSuite } from './bundle-suite.js';
import { firstHour } from './first-hour.js';
import { installed } from './installed.js';
import { runInBrowser } from './run-in-browser.js';
import { desktopCode, runOnDesktop } from './run-on-desktop.js';
import type { Tally } from './suite/lines.js';
import { tell } from './tell.js';
import { root } from './vscode-server.js';

/** `--only=typing,as-a-user` runs these files of the suite, or these walks, alone, with the extension as bundled and not as installed. */
const only = process.argv.flatMap((word) => /^--only=(.*)$/.exec(word)?.[1]?.split(',') ?? []);
const suite = await bundleSuite(
  'node',
  only.filter((name) => name !== 'as-a-user'),
);
const sum = (parts: readonly Tally[]): Tally => ({
  passed: parts.reduce((n, { passed }) => n + passed, 0),
  failed: parts.reduce((n, { failed }) => n + failed, 0),
  pending: parts.reduce((n, { pending }) => n + pending, 0),
  lines: parts.flatMap(({ lines }) => lines),
});
if (only.length > 0) {
  execFileSync(process.execPath, [join(root, 'packages/extension/build/bundle.mjs')], { stdio: 'inherit' });
  const walks = only.includes('as-a-user') ? [await asAUser()] : [];
  const parts = only.some((name) => name !== 'as-a-user') ? [await runInBrowser(root, suite)] : [];
  tell('editor', sum([...parts, ...walks]));
} else {
  // The desktop program where a path to it is given; else a VS Code served to a browser, with the package installed as
  // a user installs it. Never neither.
  const code = desktopCode();
  const { data, empty } = installed();
  const inside = code ? await runOnDesktop(code, root, suite) : await runInBrowser(empty, suite, data);
  tell('editor', sum([inside, await firstHour(empty, data), await asAUser()]));
}
