import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { transform } from 'esbuild';

/**
 * Packs what lies in a folder `generated/texts`: pages, catalogs and the library, a third of the server's bundle as
 * they are. Such a module exports functions without arguments that give plain data, and imports nothing. In a bundle each
 * of them unpacks its data at its first call, and keeps it.
 *
 * @type {import('esbuild').Plugin}
 */
export const packedTexts = {
  name: 'packed-texts',
  setup(build) {
    const unpack = fileURLToPath(
      new URL(
        `./unpack.${build.initialOptions.platform === 'node' ? 'node' : 'browser'}.mjs`,
        import.meta.url,
      ),
    );
    build.onLoad({ filter: /[\\/]generated[\\/]texts[\\/][\w-]+\.ts$/ }, async ({ path }) => {
      const { code } = await transform(await readFile(path, 'utf8'), { loader: 'ts', format: 'esm' });
      const texts = await import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`);
      const packed = Object.entries(texts).map(([name, give]) => {
        const data = deflateRawSync(JSON.stringify(give()), { level: 9 }).toString('base64');
        return `export const ${name} = /* @__PURE__ */ unpack("${data}");`;
      });
      return { contents: [`import { unpack } from ${JSON.stringify(unpack)};`, ...packed].join('\n') };
    });
  },
};
