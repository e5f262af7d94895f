import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './vscode-server.js';

/** Bundles the suite for the host that runs it, and gives the path of the file, extension and all. */
export const bundleSuite = async (host: 'node' | 'web'): Promise<string> => {
  const outfile = join(root, 'tests/host/out', `suite.${host}.${host === 'node' ? 'cjs' : 'js'}`);
  await build({
    absWorkingDir: root,
    entryPoints: ['tests/host/suite/index.ts'],
    outfile,
    bundle: true,
    format: 'iife',
    globalName: 'suite',
    // Mocha's browser build also puts itself into `module.exports`. Ours comes last.
    footer: { js: 'module.exports = suite;' },
    platform: host === 'node' ? 'node' : 'browser',
    target: 'es2022',
    conditions: ['source'],
    external: ['vscode'],
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return outfile;
};
