import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CopiedTree } from './copied-tree.js';

const folder = 'packages/rules/src/crib-twin';

/** A program that uses the packages of the copy, and prints what they know of the new rule. */
const program = `
import { readFileSync } from 'node:fs';
import { wordsIn } from '@cribwright/messages';
import { rules } from '@cribwright/rules';
import { openWorkspace } from '@cribwright/workspace';

const rule = rules.find((r) => r.id === 'crib-twin');
const page = readFileSync('${folder}/rule.md', 'utf8');
const [, unsafe] = /^\`\`\`crib\\n([\\s\\S]*?)^\`\`\`/m.exec(page);
const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [], today: '2026-05-01', push: false });
workspace.put('file:///twin.crib', unsafe, 1);
await workspace.load('file:///twin.crib');
console.log(JSON.stringify({
  titles: ['en', 'es'].map((locale) => wordsIn(locale, 'us').message(rule.title)),
  found: workspace.check('file:///twin.crib').problems.map((p) => p.code),
}));
`;

describe('a new rule', () => {
  let tree: CopiedTree;
  let before: ReadonlyMap<string, string>;
  let after: ReadonlyMap<string, string>;

  // The folder of a rule under another name, with its own id and words, and every generator run once.
  beforeAll(() => {
    tree = new CopiedTree();
    before = tree.files();
    const path = join(tree.root, folder);
    cpSync(join(tree.root, 'packages/rules/src/crib-layout'), path, { recursive: true });
    for (const file of readdirSync(path)) {
      const text = readFileSync(join(path, file), 'utf8')
        .replaceAll('crib-layout', 'crib-twin')
        .replace(/^title = .*$/m, file.includes('.es.') ? 'title = La gemela' : 'title = The twin');
      writeFileSync(join(path, file), text);
    }
    tree.node('.ci/generate.mjs');
    after = tree.files();
  });
  afterAll(() => tree.remove());

  const source = (file: string) => readFileSync(join(tree.root, file), 'utf8');

  it('touches its folder, and beside it only what is generated', () => {
    const changed = [...after.keys()].filter((file) => before.get(file) !== after.get(file)).sort();
    expect([...before.keys()].filter((file) => !after.has(file))).toEqual([]);
    expect(changed.filter((file) => file.startsWith(`${folder}/`))).toEqual(
      readdirSync(join(tree.root, folder), { encoding: 'utf8' })
        .map((file) => `${folder}/${file}`)
        .sort(),
    );
    expect(changed.filter((file) => !file.startsWith(`${folder}/`))).toEqual([
      'packages/messages/src/generated/catalogs.ts',
      'packages/messages/src/generated/texts/english.ts',
      'packages/messages/src/generated/texts/spanish.ts',
      'packages/rules/docs/rules.es.md',
      'packages/rules/docs/rules.md',
      'packages/rules/src/generated/rule-index.ts',
      'packages/rules/src/generated/texts/rule-pages.ts',
    ]);
  });

  it('is run, in words of both languages, and its page finds what it says', () => {
    const file = join(tree.root, 'ask.mjs');
    writeFileSync(file, program);
    const known = JSON.parse(tree.node('--conditions=source', '--import', 'tsx', file)) as {
      readonly titles: readonly string[];
      readonly found: readonly string[];
    };
    expect(known.titles).toEqual(['The twin', 'La gemela']);
    expect(known.found).toContain('crib-twin');
  });

  it('is in the index of rules and in the pages that users read, in both languages', () => {
    expect(source('packages/rules/docs/rules.md')).toContain('\n**The twin.** ');
    expect(source('packages/rules/docs/rules.es.md')).toContain('\n**La gemela.** ');
    expect(source('packages/rules/src/generated/texts/rule-pages.ts')).toContain("\n  'crib-twin': {");
  });
});
