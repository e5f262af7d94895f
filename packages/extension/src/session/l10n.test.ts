import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const src = new URL('..', import.meta.url).pathname;
const spanish: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(new URL('../../l10n/bundle.l10n.es.json', import.meta.url), 'utf8'),
);
const said = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((f) => f.isFile() && f.name.endsWith('.ts') && !f.name.endsWith('.test.ts'))
  .flatMap((f) => [...readFileSync(join(f.parentPath, f.name), 'utf8').matchAll(/l10n\.t\(\s*'([^']*)'/g)])
  .map(([, words]) => words ?? '');

it('says everything in Spanish too, and nothing that is no longer said', () => {
  expect(said.length).toBeGreaterThan(0);
  expect(Object.keys(spanish).sort()).toEqual([...new Set(said)].sort());
});

it('keeps the holes', () => {
  const holes = (text: string) => text.match(/\{\d\}/g) ?? [];
  const lost = Object.entries(spanish).filter(([en, es]) => String(holes(en)) !== String(holes(es)));
  expect(lost).toEqual([]);
});
