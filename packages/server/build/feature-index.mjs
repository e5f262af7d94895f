// Lists every feature of the language server, so that adding one touches no other file.
// `--check` fails where the list is out of date.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const source = join(dirname(fileURLToPath(import.meta.url)), '..', 'src');
const target = join(source, 'generated', 'features.ts');

const found = readdirSync(join(source, 'features'), { recursive: true, withFileTypes: true })
  .filter((f) => f.isFile() && f.name.endsWith('.ts') && !f.name.endsWith('.test.ts'))
  .map((f) => join(f.parentPath, f.name))
  .flatMap((path) =>
    [...readFileSync(path, 'utf8').matchAll(/^export const (\w+): Feature = /gm)].map(([, name]) => ({
      name,
      from: `../${relative(source, path).replaceAll('\\', '/').replace(/\.ts$/, '.js')}`,
    })),
  )
  .sort((a, b) => a.from.localeCompare(b.from));

const text = [
  '// Made by build/feature-index.mjs. Do not edit.',
  "import type { Feature } from '../context/feature.js';",
  ...found.map(({ name, from }) => `import { ${name} } from '${from}';`),
  '',
  '/** Every feature that the server has. */',
  `export const features: readonly Feature[] = [\n${found.map(({ name }) => `  ${name},\n`).join('')}];`,
  '',
].join('\n');

const stands = (() => {
  try {
    return readFileSync(target, 'utf8');
  } catch {
    return undefined;
  }
})();
if (process.argv.includes('--check')) {
  if (stands !== text) {
    console.error(
      'src/generated/features.ts is out of date: run node packages/server/build/feature-index.mjs',
    );
    process.exit(1);
  }
} else if (stands !== text) writeFileSync(target, text);
