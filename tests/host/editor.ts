import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve } from './serve.js';
import { root } from './vscode-server.js';

// npm run editor: the extension with the examples, in the desktop VS Code where `code` is there, else served to
// a browser on this machine.
const examples = join(root, 'examples');

if (
  spawnSync(process.execPath, [join(root, 'packages/extension/build/bundle.mjs')], { stdio: 'inherit' })
    .status !== 0
) {
  console.error('The extension could not be built. See the lines above.');
  process.exit(2);
}

const windows = process.platform === 'win32';
const desktop = spawnSync('code', ['--version'], { shell: windows, stdio: 'ignore' }).status === 0;
if (desktop && !process.argv.includes('--browser')) {
  spawn('code', [`--extensionDevelopmentPath=${root}`, examples], {
    shell: windows,
    stdio: 'inherit',
  });
} else {
  const data = join(tmpdir(), 'cribwright-editor');
  settle(join(data, 'data/Machine'));
  const served = await serve({ data });
  const remote = (path: string): string => `vscode-remote://${served.origin}${path}`;
  const payload = JSON.stringify([
    ['extensionDevelopmentPath', remote(root)],
    ['openFile', remote(join(examples, 'plans/trailer-on-car.crib'))],
    ['skipWelcome', 'true'],
  ]);
  console.log(`
The editor is at

  http://${served.origin}/?folder=${encodeURI(examples)}&payload=${encodeURIComponent(payload)}

Open it in a browser on this machine. Changes are saved in ${examples}.
Press Ctrl+C here to stop it.
`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.on(signal, () => {
      served.stop();
      process.exit(0);
    });
  }
}

/** Keeps what the editor asks of a newcomer out of the way of the first plan. Settings once written are left alone. */
function settle(folder: string): void {
  const file = join(folder, 'settings.json');
  if (existsSync(file)) return;
  mkdirSync(folder, { recursive: true });
  const settings = {
    'git.openRepositoryInParentFolders': 'never',
    'extensions.ignoreRecommendations': true,
  };
  writeFileSync(file, `${JSON.stringify(settings, null, 2)}\n`);
}
