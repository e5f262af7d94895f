import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, deflateRawSync } from 'node:zlib';
import { transform } from 'esbuild';
import { toBase91 } from './base91.mjs';
import { messageId } from './once-packed.mjs';

/**
 * Packs what lies in a folder `generated/texts`: pages, catalogs and the library, a third of the server's bundle as
 * they are. Such a module exports functions without arguments that give plain data, and imports nothing. In a bundle each
 * of them unpacks its data at its first call, and keeps it. Catalogs go in by package, without those left out, and the ids
 * of their messages once for all languages.
 *
 * @param {readonly string[]} leftOut packages whose words the bundle never says
 * @returns {import('esbuild').Plugin}
 */
export const packedTexts = (leftOut) => ({
  name: 'packed-texts',
  setup(build) {
    const node = build.initialOptions.platform === 'node';
    const unpack = fileURLToPath(new URL(`./unpack.${node ? 'node' : 'browser'}.mjs`, import.meta.url));
    const pack = (data) =>
      toBase91(node ? brotli(JSON.stringify(data)) : deflateRawSync(JSON.stringify(data), { level: 9 }));
    const kept = (catalog) =>
      Object.fromEntries(Object.entries(catalog).filter(([owner]) => !leftOut.includes(owner)));
    const from = `import { unpack, withIds } from ${JSON.stringify(unpack)};`;
    const made = (name, data) => `export const ${name} = /* @__PURE__ */ unpack("${data}");`;
    build.onLoad({ filter: /[\\/]generated[\\/]texts[\\/][\w-]+\.ts$/ }, async ({ path }) => {
      const texts = Object.entries(await textsOf(path));
      const english = join(dirname(path), 'english.ts');
      if (path === english) {
        const packed = texts.map(([name, give]) => made(name, pack(kept(give()))));
        return { contents: [from, ...packed].join('\n') };
      }
      if (!existsSync(english)) {
        const packed = texts.map(([name, give]) => made(name, pack(give())));
        return { contents: [from, ...packed].join('\n') };
      }
      // A catalog of another language: its ids are those of the English one.
      const ids = idsOf((await textsOf(english)).englishTexts());
      const packed = texts.map(([name, give]) => {
        if (idsOf(give()) !== ids) throw new Error(`${path} does not hold its messages as english.ts does.`);
        return `export const ${name} = /* @__PURE__ */ withIds("${pack(withoutIds(kept(give())))}", englishTexts);`;
      });
      return { contents: [from, "import { englishTexts } from './english.ts';", ...packed].join('\n') };
    });
  },
});

async function textsOf(path) {
  const { code } = await transform(await readFile(path, 'utf8'), { loader: 'ts', format: 'esm' });
  return import(`data:text/javascript;base64,${Buffer.from(code).toString('base64')}`);
}

const idsOf = (catalog) =>
  JSON.stringify(Object.entries(catalog).map(([owner, t]) => [owner, t.match(messageId)]));
const withoutIds = (catalog) =>
  Object.fromEntries(Object.entries(catalog).map(([owner, text]) => [owner, text.replace(messageId, '=')]));

/** Node expands it by itself, and it is a sixth smaller than the other, which a worker has a small library for. */
const brotli = (text) =>
  brotliCompressSync(text, {
    params: {
      [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_SIZE_HINT]: Buffer.byteLength(text),
    },
  });
