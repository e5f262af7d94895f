import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** The command line as one file, built as it ships. */
export async function buildCommand(): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'cribwright-cli-')), 'cribwright.cjs');
  await build({
    entryPoints: [join(root, 'packages/cli/src/main.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    conditions: ['source'],
    define: { 'process.env.NODE_ENV': '"production"' },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    logLevel: 'error',
  });
  return outfile;
}

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
