// Bundles all that runs from a file of its own: the extension and the language server for the desktop and for
// the browser, the page of the panel, and the command line.
// Writes esbuild's metafile of each, which says what is inside, to `.cache/metafiles/NAME.json`.
// usage: node packages/extension/build/bundle.mjs [--dev] [NAME…]
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../../..', import.meta.url));

const nodeTarget = { platform: 'node', format: 'cjs', target: 'node20' };
const workerTarget = {
  platform: 'browser',
  target: 'es2022',
  mainFields: ['browser', 'module', 'main'],
};

/** What is built, by name. A name on the command line builds that one alone. */
const bundles = {
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
  },
  'server.worker': {
    ...workerTarget,
    format: 'iife',
    entryPoints: ['packages/server/src/main-browser.ts'],
    outfile: 'packages/server/dist/server.worker.js',
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
  },
};

const flags = process.argv.slice(2);
const dev = flags.includes('--dev');
const named = flags.filter((flag) => !flag.startsWith('--'));
const unknown = named.filter((name) => !(name in bundles));
if (unknown.length > 0) {
  console.error(`No bundle is called ${unknown.join(', ')}. There are: ${Object.keys(bundles).join(', ')}.`);
  process.exit(2);
}

await mkdir(`${root}.cache/metafiles`, { recursive: true });
await Promise.all(
  (named.length > 0 ? named : Object.keys(bundles)).map(async (name) => {
    const options = bundles[name];
    if (options.outdir) await rm(`${root}${options.outdir}`, { recursive: true, force: true });
    const { metafile } = await build({
      absWorkingDir: root,
      bundle: true,
      conditions: ['source'],
      // Grammar self-checks of the parser are for its authors, and need a newer Node than ours.
      define: { 'process.env.NODE_ENV': '"production"' },
      loader: { '.crib': 'text', '.md': 'text' },
      legalComments: 'none',
      logLevel: 'warning',
      metafile: true,
      minify: !dev,
      sourcemap: dev,
      ...options,
    });
    await writeFile(`${root}.cache/metafiles/${name}.json`, JSON.stringify(metafile));
  }),
);
