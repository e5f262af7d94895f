// What is bundled, and how. The tests bundle by the same options.
import { fileURLToPath } from 'node:url';
import { noNotebooks } from './no-notebooks.mjs';
import { packedTexts } from './packed-texts.mjs';
import { smallLodash } from './small-lodash.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));

const nodeTarget = { platform: 'node', format: 'cjs', target: 'node20' };
const workerTarget = {
  platform: 'browser',
  target: 'es2022',
  mainFields: ['browser', 'module', 'main'],
};
/** The protocol's package asks for the older layout of these types, our code for the newer one. One copy is enough. */
const oneCopyOfTypes = {
  'vscode-languageserver-types': fileURLToPath(import.meta.resolve('vscode-languageserver-types')),
};

/** Packages whose words a server never says: it sends what they say as data, and they make the words. */
const notOfServers = ['drawing', 'preview', 'cli'];

/** What is built, by name. `leftOut`: packages whose words do not go in. `plugins`: further ones. */
export const bundles = {
  extension: {
    ...nodeTarget,
    entryPoints: ['packages/extension/src/extension.ts'],
    outfile: 'packages/extension/dist/extension.cjs',
    external: ['vscode'],
  },
  'extension.web': {
    ...workerTarget,
    format: 'cjs',
    entryPoints: ['packages/extension/src/extension-web.ts'],
    outfile: 'packages/extension/dist/extension.web.js',
    external: ['vscode'],
  },
  server: {
    ...nodeTarget,
    entryPoints: ['packages/server/src/main.ts'],
    outfile: 'packages/server/dist/server.cjs',
    leftOut: notOfServers,
    plugins: [noNotebooks],
  },
  'server.worker': {
    ...workerTarget,
    format: 'iife',
    entryPoints: ['packages/server/src/main-browser.ts'],
    outfile: 'packages/server/dist/server.worker.js',
    leftOut: notOfServers,
    plugins: [noNotebooks],
  },
  panel: {
    platform: 'browser',
    target: 'es2022',
    format: 'esm',
    splitting: true,
    entryPoints: { panel: 'packages/preview/src/main.tsx' },
    outdir: 'packages/preview/dist/panel',
    chunkNames: '[name]-[hash]',
    jsx: 'automatic',
    jsxImportSource: 'preact',
  },
  cli: {
    ...nodeTarget,
    entryPoints: ['packages/cli/src/main.ts'],
    outfile: 'packages/cli/dist/cribwright.cjs',
    plugins: [noNotebooks],
  },
};

/**
 * All options of one bundle for esbuild's `build`.
 *
 * @param {keyof typeof bundles} name
 * @returns {import('esbuild').BuildOptions}
 */
export const bundleOptions = (name) => {
  const { leftOut = [], plugins = [], ...options } = bundles[name];
  return {
    absWorkingDir: root,
    alias: oneCopyOfTypes,
    bundle: true,
    charset: 'utf8',
    conditions: ['source'],
    // Grammar self-checks of the parser are for its authors, and need a newer Node than ours.
    define: { 'process.env.NODE_ENV': '"production"' },
    loader: { '.crib': 'text', '.md': 'text' },
    legalComments: 'none',
    logLevel: 'warning',
    plugins: [packedTexts(leftOut), smallLodash, ...plugins],
    ...options,
  };
};
