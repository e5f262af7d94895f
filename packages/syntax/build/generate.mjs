// Writes src/generated from src/cribwright.langium.
// With --check the committed files are put back as they were, and a difference fails.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const preload = new URL('./group-by.mjs', import.meta.url).href;
const made = ['ast.ts', 'grammar.ts', 'module.ts'].map((f) => `${root}/packages/syntax/src/generated/${f}`);
const before = made.map((path) => readFileSync(path, 'utf8'));
const { status } = spawnSync(
  process.execPath,
  [
    `--import=${preload}`,
    `${root}/node_modules/langium-cli/bin/langium.js`,
    'generate',
    '-f',
    `${root}/packages/syntax/langium-config.json`,
    // Production: the grammar's self-checks need a newer Node.
    '--mode=production',
  ],
  { stdio: 'inherit', cwd: root },
);
process.exitCode = status ?? 1;
// The grammar is loaded without the services of an editor, which nothing here needs.
const [, grammar = ''] = made;
writeFileSync(
  grammar,
  readFileSync(grammar, 'utf8').replace(
    "import { loadGrammarFromJson } from 'langium';",
    "import { loadGrammarFromJson } from '../load-grammar.js';",
  ),
);
if (process.argv.includes('--check')) {
  for (const [i, path] of made.entries()) {
    if (readFileSync(path, 'utf8') === before[i]) continue;
    console.error(`${path} is not what the grammar makes. Run npm run generate.`);
    writeFileSync(path, before[i] ?? '');
    process.exitCode = 1;
  }
}
