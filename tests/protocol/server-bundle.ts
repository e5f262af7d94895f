import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../../', import.meta.url));

let ready: Promise<string> | undefined;

/**
 * Bundles the language server from source as the extension does, and gives the path. Once per test file, so a
 * test never runs against a stale build.
 */
export function serverBundle(): Promise<string> {
  ready ??= bundle();
  return ready;
}

async function bundle(): Promise<string> {
  const out = `${root}tests/protocol/out`;
  mkdirSync(out, { recursive: true });
  const outfile = `${out}/server-${process.pid}.cjs`;
  await build({
    entryPoints: [`${root}packages/language/src/server/main.ts`],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    conditions: ['source'],
    define: { 'process.env.NODE_ENV': '"production"' },
    logLevel: 'error',
  });
  return outfile;
}
