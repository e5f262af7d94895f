import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** Bundles the server to compare with, as ours is bundled. Gives its file. */
export async function bundleBareServer(): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'cribwright-bare-')), 'bare-server.cjs');
  await build({
    entryPoints: [fileURLToPath(new URL('./bare-server.ts', import.meta.url))],
    outfile,
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    conditions: ['source'],
    define: { 'process.env.NODE_ENV': '"production"' },
    logLevel: 'warning',
  });
  return outfile;
}
