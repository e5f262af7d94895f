// Packs the rules' pages, in every language, into a module, so that a bundle and a browser worker hold them:
// JSON, compressed by zlib, as base64. Plain, the plans that both languages repeat would make half of the module.
// With `--check`, writes nothing and fails where the module holds other pages than the rule folders.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync, inflateSync } from 'node:zlib';
import { ruleFolders } from './rule-index.mjs';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const target = at('../src/generated/packed-rule-pages.ts');

/** The file of a rule's page in each language. */
export const pageFiles = { en: 'rule.md', es: 'rule.es.md' };

/** Every rule's page, by rule and language. Fails where a rule lacks one. */
export const rulePages = () =>
  Object.fromEntries(
    ruleFolders().map((id) => [
      id,
      Object.fromEntries(
        Object.entries(pageFiles).map(([locale, file]) => [
          locale,
          readFileSync(at(`../src/${id}/${file}`), 'utf8'),
        ]),
      ),
    ]),
  );

const written = (pages) =>
  [
    '// Written by build/embed-pages.mjs. Do not edit.',
    "/** Every rule's page by rule and language: JSON, compressed by zlib, as base64. */",
    `export const packedRulePages =\n  '${deflateSync(pages, { level: 9 }).toString('base64')}';`,
    '',
  ].join('\n');

/** What a module holds. Compared unpacked, because another version of zlib may pack the same pages otherwise. */
const held = (module) => {
  const packed = /'([\w+/=]+)'/.exec(module)?.[1];
  return packed === undefined ? undefined : inflateSync(Buffer.from(packed, 'base64')).toString('utf8');
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const pages = JSON.stringify(rulePages());
  const upToDate = existsSync(target) && held(readFileSync(target, 'utf8')) === pages;
  if (!upToDate && process.argv.includes('--check')) {
    console.error('The pages of the rules are out of date: run `npm run generate`.');
    process.exitCode = 1;
  } else if (!upToDate) {
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, written(pages));
  }
}
