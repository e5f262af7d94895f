import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const packages = new URL('../../packages/', import.meta.url).pathname;

const textOf = (fits: (name: string) => boolean): string =>
  readdirSync(packages, { withFileTypes: true, recursive: true })
    .filter((f) => f.isFile() && fits(f.name) && !/\b(dist|node_modules|generated)\b/.test(f.parentPath))
    .map((f) => readFileSync(join(f.parentPath, f.name), 'utf8'))
    .join('\n');

const ids = [
  ...readFileSync(join(packages, 'messages/src/generated/catalogs.ts'), 'utf8').matchAll(
    /^ {2}readonly '([^']+)': /gm,
  ),
].flatMap(([, id]) => id ?? []);

it('has no message that nothing says', () => {
  const code = textOf((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name));
  const made = [...code.matchAll(/`([a-z-]+\.[^`]*\$\{[^`]+)`/g)].map(
    ([, text = '']) =>
      new RegExp(
        `^${text
          .split(/\$\{[^}]*\}/)
          .map((t) => t.replace(/[.*+?^$()|[\]\\]/g, '\\$&'))
          .join('.+')}$`,
      ),
  );
  expect(ids.length).toBeGreaterThan(200);
  expect(ids.filter((id) => !code.includes(`'${id}'`) && !made.some((m) => m.test(id)))).toEqual([]);
});
