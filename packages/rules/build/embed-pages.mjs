// Puts the rules' pages, in every language, into a module, so that a bundle and a browser worker hold them. What lies
// in a folder `generated/texts` is packed in bundles, and is a function: it is unpacked at its first call.
// With `--check`, writes nothing and fails where it is out of date.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ruleFolders } from './rule-index.mjs';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const target = at('../src/generated/texts/rule-pages.ts');

/** The file of a rule's page in each language. */
export const pageFiles = { en: 'rule.md', es: 'rule.es.md' };
const locales = Object.keys(pageFiles);

/** The page of a rule in a language. Fails where the rule has none. */
export const rulePage = (id, locale) => readFileSync(at(`../src/${id}/${pageFiles[locale]}`), 'utf8');

const quote = (text) =>
  `\`${text.replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${')}\``;

const module = () => `// Written by build/embed-pages.mjs. Do not edit.
/** Every rule's page as Markdown, by rule and language. */
export const rulePages = (): Readonly<Record<string, { ${locales.map((l) => `readonly ${l}: string`).join('; ')} }>> => texts;

const texts = {
${ruleFolders()
  .map((id) => `  '${id}': {\n${locales.map((l) => `    ${l}: ${quote(rulePage(id, l))},\n`).join('')}  },`)
  .join('\n')}
};
`;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = module();
  const upToDate = existsSync(target) && readFileSync(target, 'utf8') === text;
  if (!upToDate && process.argv.includes('--check')) {
    console.error('The pages of the rules are out of date: run `npm run generate`.');
    process.exitCode = 1;
  } else if (!upToDate) {
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
  }
}
