import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { CopiedTree } from './copied-tree.js';

const reference = ['--conditions=source', '--import', 'tsx', 'packages/language/build/artifacts.mjs'];
let tree: CopiedTree;

// A crib may say one thing more. That a check, a drawing or a sheet reads it, `tests/readers` asks.
beforeAll(() => {
  tree = new CopiedTree();
  const schema = join(tree.root, 'packages/language/src/schema/crib.ts');
  const before = readFileSync(schema, 'utf8');
  const after = before.replace(
    "  shims: property('shims'",
    "  paint: property('paint', choice('paint', 'red', 'white'), { doc: term('doc.crib--base'), example: 'paint red' }),\n$&",
  );
  expect(after).not.toBe(before);
  writeFileSync(schema, after);
});
afterAll(() => tree.remove());

it('asks the reference for a new property of a crib, and the reference is written from the schema', () => {
  expect(() => tree.node(...reference, '--check')).toThrow('is not what the schema makes');
  tree.node(...reference);
  expect(readFileSync(join(tree.root, 'packages/language/docs/syntax.md'), 'utf8')).toContain(
    '\n- `paint`: ',
  );
  expect(() => tree.node(...reference, '--check')).not.toThrow();
});
