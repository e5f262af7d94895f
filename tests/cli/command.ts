import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs it as a shell would, with its output in a pipe. */
export function runCommand(
  file: string,
  args: readonly string[],
  options: { readonly cwd?: string; readonly input?: string; readonly env?: NodeJS.ProcessEnv } = {},
): Ended {
  const ended = spawnSync(process.execPath, [file, ...args], {
    cwd: options.cwd ?? root,
    input: options.input ?? '',
    encoding: 'utf8',
    env: { PATH: process.env.PATH, ...options.env },
  });
  return { code: ended.status, out: ended.stdout, err: ended.stderr };
}
