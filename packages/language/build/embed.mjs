// Puts the bundled library into a module, so that a bundle and a browser worker hold it. What lies in a folder
// `generated/texts` is packed in bundles, and is a function: it is unpacked at its first call.
// With `--check`, writes nothing and fails where it is out of date.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const libraryFolder = at('../src/library/');

const library = readdirSync(libraryFolder)
  .filter((name) => name.endsWith('.crib'))
  .sort()
  .map((name) => [name, readFileSync(libraryFolder + name, 'utf8')]);

const quote = (text) =>
  `\`${text.replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${')}\``;

const module = (name, doc, entries) =>
  [
    `// Written by build/embed.mjs. Do not edit.`,
    `/** ${doc} */`,
    `export const ${name} = (): Readonly<Record<string, string>> => texts;`,
    '',
    'const texts = {',
    ...entries.map(([key, text]) => `  '${key}': ${quote(text)},`),
    '};',
    '',
  ].join('\n');

const modules = [
  [
    '../src/generated/texts/library.ts',
    module('libraryTexts', 'The bundled library: file name to text.', library),
  ],
];

let stale = 0;
for (const [path, text] of modules) {
  const file = at(path);
  const now = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (now === text) continue;
  stale += 1;
  if (process.argv.includes('--check'))
    console.error(`${file} is out of date: node packages/language/build/embed.mjs`);
  else writeFileSync(file, text);
}
process.exitCode = process.argv.includes('--check') && stale > 0 ? 1 : 0;
