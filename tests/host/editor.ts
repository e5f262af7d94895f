import { spawn, spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveForUser } from './user-editor.js';
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
  const served = await serveForUser(examples, join(tmpdir(), 'cribwright-user-editor'));
  console.log(`
The editor is at

  ${served.address}

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
