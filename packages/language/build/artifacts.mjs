// Writes what editors and readers need of the language, from the schema: coloring, brackets, snippets, the syntax page.
// With --check it writes nothing and fails where what is committed differs.
// Run: node --conditions=source --import tsx packages/language/build/artifacts.mjs [--check]
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { wordsIn } from '@cribwright/messages';
import { languageConfiguration, snippets } from '../src/artefacts/editor-files.ts';
import { syntaxPage } from '../src/artefacts/syntax-page.ts';
import { textMateGrammar } from '../src/artefacts/text-mate.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const json = (value) => `${JSON.stringify(value, undefined, 2)}\n`;
const files = {
  'syntaxes/cribwright.tmLanguage.json': json(textMateGrammar()),
  'syntaxes/language-configuration.json': json(languageConfiguration()),
  'syntaxes/cribwright.code-snippets.json': json(snippets()),
  ...syntaxPage('packages/language/docs/syntax', wordsIn('en', 'us')),
  ...syntaxPage('packages/language/docs/syntax.es', wordsIn('es', 'us')),
};

const check = process.argv.includes('--check');
for (const [path, text] of Object.entries(files)) {
  const full = `${root}/${path}`;
  const now = existsSync(full) ? readFileSync(full, 'utf8') : undefined;
  if (now === text) continue;
  if (check) {
    console.error(`${path} is not what the schema makes. Run npm run generate.`);
    process.exitCode = 1;
  } else {
    mkdirSync(dirname(full), { recursive: true });
    writeFileSync(full, text);
    console.log(`wrote ${path}`);
  }
}
