import { spawnSync } from 'node:child_process';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { run } from '@cribwright/cli';
import { today } from '@cribwright/workspace';
import { readStandardInput } from '../../packages/cli/src/files/read-standard-input.js';

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

/** Runs it within this process, which is many times quicker: what `main.ts` adds to it is left out. */
export async function runHere(
  args: readonly string[],
  options: { readonly cwd?: string; readonly input?: string } = {},
): Promise<Ended> {
  let [out, err] = ['', ''];
  const code = await run(args, {
    cwd: options.cwd ?? root,
    env: { PATH: process.env.PATH },
    isTTY: false,
    today: today(),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    stdin: () => readStandardInput(Readable.from([Buffer.from(options.input ?? '')])),
  });
  return { code, out, err };
}
