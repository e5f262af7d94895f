// npm test: every test there is, on a machine with Node and npm. Sets up what they need; skips none of them.
// The last line is `N passed, N failed`.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { tallyFailures, vitestFailures } from './failures.mjs';
import { install, needNode20, node, root, run, source } from './step.mjs';

needNode20();
install();

/** Programs that tests use and npm does not have: name of the program, Debian package. */
const programs = [
  ['chromium', 'chromium'],
  ['nvim', 'neovim'],
  ['pdftotext', 'poppler-utils'],
];

const there = (program) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)));

const missing = programs.filter(([program]) => !there(program)).map(([, name]) => name);
if (missing.length > 0) {
  const isRoot = process.getuid?.() === 0;
  if (isRoot && there('apt-get')) {
    console.log(`Installing ${missing.join(', ')}.`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    run('apt-get', ['update', '-qq'], { env });
    // A browser without a font shows no words.
    const all = [...missing, 'fonts-dejavu-core'];
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...all], { env, stdio: 'ignore' });
  }
  const still = programs.filter(([program]) => !there(program)).map(([, name]) => name);
  if (still.length > 0) {
    console.error(
      `The tests need ${still.join(', ')}. ${isRoot ? '' : 'As you are not root they were not installed. '}` +
        `On Debian: sudo apt-get install -y ${still.join(' ')}`,
    );
    console.log(`0 passed, ${still.length} failed`);
    process.exit(1);
  }
}

const results = join(root, '.cache/results');
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

/** A step that is one test by itself: it holds or it does not. */
const whole = (code) => ({
  passed: code === 0 ? 1 : 0,
  failed: code === 0 ? 0 : 1,
});

/** A step that counts its own tests, and writes the tally to a file. No tally is a failure. */
const counted = (code, file) => {
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const { passed, failed } = JSON.parse(readFileSync(file, 'utf8'));
  return { passed, failed: failed === 0 && code !== 0 ? 1 : failed, failures: tallyFailures(file) };
};

const vitest = () => {
  const file = join(results, 'vitest.json');
  const code = node([
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile=${file}`,
  ]);
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const { numPassedTests, numFailedTests, numPendingTests, success } = report;
  // A skipped test hides something; it counts as failed.
  const failed = numFailedTests + numPendingTests;
  return {
    passed: numPassedTests,
    failed: failed === 0 && (code !== 0 || !success) ? 1 : failed,
    failures: vitestFailures(report),
  };
};

const host = (script) => {
  const file = join(results, `${script.replaceAll('/', '-')}.json`);
  return counted(source([script, `--tally=${file}`]), file);
};

const steps = [
  ['generated files', () => whole(node(['.ci/generate.mjs', '--check']))],
  ['lint', () => whole(node(['node_modules/@biomejs/biome/bin/biome', 'check', '.']))],
  ['types', () => whole(node(['node_modules/typescript/bin/tsc', '-b']))],
  ['unused code', () => whole(node(['node_modules/knip/bin/knip.js']))],
  // Its name has the words of the steps that need it: `npm test browser` makes it anew too.
  ['package for editor and browser', () => whole(node(['packages/extension/build/package.mjs']))],
  // Among them each published value that `npm run verify` prints.
  ['unit, protocol, command line, drawings', vitest],
  ['editor', () => host('tests/host/run.ts')],
  ['editor in a browser', () => host('tests/web/run.ts')],
];

const only = process.argv.slice(2);
const rows = [];
for (const [name, step] of steps) {
  if (only.length > 0 && !only.some((word) => name.includes(word))) continue;
  console.log(`\n== ${name}`);
  rows.push({ name, ...step() });
}

console.log('\n');
// What failed is said here again: it must not be looked for in a long log.
for (const { name, failed, failures = [] } of rows) {
  if (failed > 0)
    console.log(`What failed in "${name}":\n${failures.join('\n') || 'See its lines above.'}\n`);
}
for (const { name, passed, failed } of rows) {
  console.log(`${failed > 0 ? 'FAILED' : 'passed'}  ${name}: ${passed} passed, ${failed} failed`);
}
const total = (key) => rows.reduce((sum, row) => sum + row[key], 0);
console.log(`\n${total('passed')} passed, ${total('failed')} failed`);
process.exit(total('failed') > 0 || total('passed') === 0 ? 1 : 0);
