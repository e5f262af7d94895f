import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { BoundFile } from '@cribwright/language';
import { edited, most, type SomeEdit } from '@cribwright/syntax/testing';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openWorkspace } from './open-workspace.js';
import type { Workspace } from './workspace.js';

const examples = new URL('../../../../examples/', import.meta.url);
const names = ['plans', 'patterns', 'lessons', 'terminals', 'policy', 'fleet'].flatMap((folder) =>
  readdirSync(new URL(`${folder}/`, examples)).map((name) => `${folder}/${name}`),
);
const folder = 'file:///alder-ridge/';
const uriOf = (name: string): string => `${folder}${name}`;
const known = new Map<string, string | undefined>();
/** Read once: the files may change while the test runs. */
const textOf = (uri: string): string | undefined => {
  const path = new URL(uri.slice(folder.length), examples);
  if (!known.has(uri)) known.set(uri, existsSync(path) ? readFileSync(path, 'utf8') : undefined);
  return known.get(uri);
};

async function opened(name: string, texts: ReadonlyMap<string, string>) {
  const workspace = openWorkspace({
    files: { read: async (uri) => textOf(uri) },
    folders: [folder.slice(0, -1)],
  });
  for (const [uri, text] of texts) workspace.put(uri, text, 1);
  await workspace.load(uriOf(name));
  return workspace;
}

/** Everything in a bound file. Blocks hang in rings; what they are of is compared by place. */
const plainOf = (file: BoundFile | undefined): string =>
  JSON.stringify(file, (key, value: unknown) => {
    if (key === 'version') return undefined;
    if (typeof value === 'bigint') return String(value);
    if (['parent', 'block', 'scope', 'target', 'declaration'].includes(key) && value) return spanIn(value);
    if (value && typeof value === 'object' && 'schema' in value) {
      const { schema, ...rest } = value as { schema: { keyword?: string; key?: string } };
      return { ...rest, schema: schema.keyword ?? schema.key };
    }
    return value;
  });
const spanIn = (value: unknown): unknown => {
  const { uri, span, name, kind } = value as { uri?: string; span?: unknown; name?: string; kind?: string };
  return { uri, span, name, kind };
};

const expectSame = (edited: Workspace, fresh: Workspace, uri: string): void => {
  expect(plainOf(edited.bound(uri))).toBe(plainOf(fresh.bound(uri)));
  // Names point at what is declared in the file now, and not at what was before.
  const own = edited.bound(uri);
  for (const { target } of own?.references ?? [])
    if (target?.uri === uri && target.kind !== 'pattern use') expect(own?.declarations).toContain(target);
};

const number = fc.nat(most - 1);
const someEdit = fc.tuple(number, number, number, number);

it('binds edited files as if they were read for the first time', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...names),
      fc.array(fc.tuple(fc.nat(5), someEdit), { minLength: 1, maxLength: 5 }),
      async (name, edits: readonly (readonly [number, SomeEdit])[]) => {
        const uri = uriOf(name);
        const texts = new Map([[uri, textOf(uri) ?? '']]);
        const workspace = await opened(name, texts);
        workspace.bound(uri);
        for (const [i, [which, edit]] of edits.entries()) {
          // Mostly the file itself, now and then one that it uses.
          const all = workspace.uris();
          const one = which === 0 ? (all[i % all.length] ?? uri) : uri;
          const text = edited(texts.get(one) ?? textOf(one) ?? '', edit);
          texts.set(one, text);
          workspace.put(one, text, i + 2);
          await workspace.load(uri);
          const fresh = await opened(name, texts);
          // A hint at a file's name speaks of those that were met so far.
          for (const met of workspace.uris()) await fresh.load(met);
          expectSame(workspace, fresh, uri);
        }
      },
    ),
    { numRuns: 60 },
  );
});

it('reads no line anew that an edit elsewhere left as it was', async () => {
  const name = 'plans/trailer-on-car.crib';
  const uri = uriOf(name);
  const text = textOf(uri) ?? '';
  const workspace = await opened(name, new Map([[uri, text]]));
  const linesOf = () =>
    workspace.bound(uri)?.blocks.flatMap((b) => b.blocks.flatMap((i) => i.properties)) ?? [];
  const before = linesOf();
  workspace.put(uri, text.replace('courses   2', 'courses   3'), 2);
  const after = linesOf();
  expect(after.length).toBe(before.length);
  // A line with no name in it is the very same; the edited one is not.
  const plain = before.flatMap((line, i) => (line.match?.references.length === 0 ? [i] : []));
  const anew = plain.filter((i) => after[i]?.match !== before[i]?.match);
  expect(plain.length).toBeGreaterThan(40);
  expect(anew.map((i) => after[i]?.key)).toEqual(['courses']);
});
