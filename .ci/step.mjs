// What the scripts here share: the folder, and a child process whose words go straight to the terminal.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs a program to its end and gives its exit code. */
export const run = (command, args, options = {}) => {
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    // Nothing here waits for an answer from the keyboard.
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
    ...options,
  });
  if (error) console.error(`${command} could not be run: ${error.message}`);
  return status ?? 1;
};

export const node = (args, options) => run(process.execPath, args, options);

/** A TypeScript file, run from source. */
export const source = (args, options) => node(['--conditions=source', '--import', 'tsx', ...args], options);

/** Ends with a message where the Node in use is too old. */
export const needNode20 = () => {
  const [major] = process.versions.node.split('.').map(Number);
  if (major >= 20) return;
  console.error(`Cribwright needs Node 20 or newer; this is ${process.version}.`);
  process.exit(2);
};

/** Installs what the lock file asks for, unless it is there already. */
export const install = () => {
  if (installed()) return;
  console.log('Installing what Cribwright is built with.');
  const code = run('npm', [existsSync(`${root}node_modules`) ? 'install' : 'ci', '--loglevel=error']);
  if (code !== 0) {
    console.error('npm could not install the packages. See the lines above.');
    process.exit(2);
  }
};

const installed = () => {
  const there = `${root}node_modules/.package-lock.json`;
  if (!existsSync(there)) return false;
  const wanted = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')).packages;
  const found = JSON.parse(readFileSync(there, 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, { version, optional, link }]) =>
      !path.startsWith('node_modules/') || optional || link || found[path]?.version === version,
  );
};
