// Writes src/generated: the parser's grammar and tree from src/grammar/cribwright.langium.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const preload = new URL('./group-by.mjs', import.meta.url).href;
const { status } = spawnSync(
  process.execPath,
  [
    `--import=${preload}`,
    `${root}/node_modules/langium-cli/bin/langium.js`,
    'generate',
    '-f',
    `${root}/packages/language/langium-config.json`,
    // Production: the grammar's self-checks need a newer Node.
    '--mode=production',
  ],
  { stdio: 'inherit', cwd: root },
);
process.exitCode = status ?? 1;
