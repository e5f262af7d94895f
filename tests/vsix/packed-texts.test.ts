import { readFileSync } from 'node:fs';
import { type BuildOptions, build } from 'esbuild';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { englishTexts } from '../../packages/messages/src/generated/texts/english.js';
import { spanishTexts } from '../../packages/messages/src/generated/texts/spanish.js';
import { bundled } from '../bundled.js';

const root = new URL('../../', import.meta.url);
const built = (name: string) => import(new URL(`packages/extension/build/${name}.mjs`, root).href);
const { bundleOptions } = (await built('bundles')) as { bundleOptions: (name: string) => BuildOptions };
const { toBase91, fromBase91 } = (await built('base91')) as {
  toBase91: (bytes: Uint8Array) => string;
  fromBase91: (text: string) => Uint8Array;
};

it('gives back what was written in 91 characters', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const text = toBase91(bytes);
      expect(text).not.toMatch(/[^#-~]|\\/);
      expect(fromBase91(text)).toEqual(bytes);
    }),
  );
});

/** The catalogs as a bundle unpacks them. */
async function catalogsIn(name: string): Promise<{ readonly english: object; readonly spanish: object }> {
  const { entryPoints: _, outfile: __, ...options } = bundleOptions(name);
  const texts = './packages/messages/src/generated/texts';
  const contents = ['english', 'spanish']
    .map((one) => `export { ${one}Texts } from '${texts}/${one}.ts';`)
    .join('\n');
  const { outputFiles } = await build({
    ...options,
    stdin: { contents, resolveDir: root.pathname },
    format: 'esm',
    write: false,
  });
  const { englishTexts: english, spanishTexts: spanish } = await import(
    `data:text/javascript;base64,${Buffer.from(outputFiles[0]?.contents ?? '').toString('base64')}`
  );
  return { english: english(), spanish: spanish() };
}

describe('catalogs in a bundle', () => {
  it.each(['cli', 'extension', 'extension.web'])('are whole in %s', async (name) => {
    expect(await catalogsIn(name)).toEqual({ english: englishTexts(), spanish: spanishTexts() });
  });

  it.each(['server', 'server.worker'])('leave out of %s what it never says', async (name) => {
    const { english, spanish } = await catalogsIn(name);
    const said = (all: Readonly<Record<string, string>>) =>
      Object.fromEntries(Object.entries(all).filter(([owner]) => !left.includes(owner)));
    expect({ english, spanish }).toEqual({ english: said(englishTexts()), spanish: said(spanishTexts()) });
  });

  it('are all that the server names', async () => {
    // The table of holes that may be left out names some too, and says nothing.
    const code = readFileSync(await bundled('server'), 'utf8').replace(/"[\w-]+\.[\w-]+":\[/g, '[');
    const idsOf = (text: string): readonly string[] =>
      [...text.matchAll(/^([\w-]+?)--([\w-]+) =/gm)].map(([, prefix, key]) => `${prefix}.${key}`);
    const [out, kept] = [true, false].map((isLeft) =>
      Object.entries(englishTexts()).flatMap(([owner, text]) =>
        left.includes(owner) === isLeft ? idsOf(text) : [],
      ),
    );
    const named = (ids: readonly string[] = []) => ids.filter((id) => code.includes(`"${id}"`));
    expect(named(kept).length).toBeGreaterThan(500);
    expect(named(out)).toEqual([]);
    // Nor does it make such an id of parts.
    const prefixes = (ids: readonly string[] = []) => new Set(ids.map((id) => id.split('.')[0] ?? ''));
    const own = [...prefixes(out)].filter((prefix) => !prefixes(kept).has(prefix));
    expect(own.filter((prefix) => code.includes(`\`${prefix}.\${`))).toEqual([]);
  });
});

/** Packages whose words a server never says. */
const left = ['drawing', 'preview', 'cli'];
