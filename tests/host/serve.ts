import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answering } from './answering.js';
import { freePort } from './free-port.js';
import { vscodeServer } from './vscode-server.js';

export interface Served {
  /** `127.0.0.1:8123` */
  readonly origin: string;
  readonly stop: () => void;
}

/**
 * Starts a VS Code server on a free loopback port. Nothing outside this machine can reach it.
 *
 * @param options `forSuite`: it lets a suite run in it. Then it shows no dialog, and takes what a user was not asked for
 *   granted
 */
export const serve = async (
  options: { readonly port?: number; readonly data?: string; readonly forSuite?: boolean } = {},
): Promise<Served> => {
  const folder = vscodeServer();
  const port = options.port ?? (await freePort());
  const data = options.data ?? mkdtempSync(join(tmpdir(), 'cribwright-vscode-'));
  const child = spawn(
    process.execPath,
    [
      join(folder, 'out/server-main.js'),
      ...['--host', '127.0.0.1', '--port', String(port)],
      ...['--without-connection-token', '--accept-server-license-terms'],
      ...['--telemetry-level', 'off', '--disable-workspace-trust'],
      ...(options.forSuite === true ? ['--enable-smoke-test-driver'] : []),
      ...['--server-data-dir', data],
    ],
    { stdio: ['ignore', 'pipe', 'pipe'] },
  );
  const log: string[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => log.push(String(chunk)));
  const origin = `127.0.0.1:${port}`;
  if (!(await answering(`http://${origin}/`, () => child.exitCode !== null))) {
    child.kill();
    throw new Error(`The VS Code server did not come up.\n${log.join('')}`);
  }
  return { origin, stop: () => child.kill() };
};
