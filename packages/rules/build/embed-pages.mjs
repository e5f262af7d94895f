// Puts the rules' pages into a module, so that a bundle and a browser worker hold them. What lies in a folder
// `generated/texts` is packed in bundles, and is a function: it is unpacked at its first call.
// With `--check`, writes nothing and fails where it is out of date.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const rulesFolder = at('../src/');

const pages = (existsSync(rulesFolder) ? readdirSync(rulesFolder, { withFileTypes: true }) : [])
  .filter((entry) => entry.isDirectory() && existsSync(`${rulesFolder}${entry.name}/rule.md`))
  .map((entry) => entry.name)
  .sort()
  .map((id) => [id, readFileSync(`${rulesFolder}${id}/rule.md`, 'utf8')]);

const quote = (text) =>
  `\`${text.replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${')}\``;

const module = (name, doc, entries) =>
  [
    `// Written by build/embed-pages.mjs. Do not edit.`,
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
    '../src/generated/texts/rule-pages.ts',
    module('rulePages', "Every rule's page: rule id to Markdown.", pages),
  ],
];

let stale = 0;
for (const [path, text] of modules) {
  const file = at(path);
  const now = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (now === text) continue;
  stale += 1;
  if (process.argv.includes('--check'))
    console.error(`${file} is out of date: node packages/rules/build/embed-pages.mjs`);
  else writeFileSync(file, text);
}
process.exitCode = process.argv.includes('--check') && stale > 0 ? 1 : 0;
