// Bundles all that runs from a file of its own: the extension and the language server for the desktop and for
// the browser, the page of the panel, and the command line.
// Writes esbuild's metafile of each, which says what is inside, to `.cache/metafiles/NAME.json`.
// usage: node packages/extension/build/bundle.mjs [--dev] [NAME…]
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { bundleOptions, bundles } from './bundles.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));

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
    const { outdir } = bundles[name];
    if (outdir) await rm(`${root}${outdir}`, { recursive: true, force: true });
    const { metafile } = await build({
      ...bundleOptions(name),
      metafile: true,
      minify: !dev,
      sourcemap: dev,
    });
    await writeFile(`${root}.cache/metafiles/${name}.json`, JSON.stringify(metafile));
  }),
);
