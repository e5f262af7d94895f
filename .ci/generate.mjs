// Writes every file that is made from another: grammar, indexes, embedded library, syntaxes, pages.
// usage: node .ci/generate.mjs [--check]   with --check nothing is written, and a file out of date fails
import { existsSync } from 'node:fs';
import { node, root, source } from './step.mjs';

const check = process.argv.includes('--check') ? ['--check'] : [];

/** In order: later ones read what earlier ones write. */
const generators = [
  ['packages/messages/build/catalogs.mjs', node],
  ['packages/rules/build/rule-index.mjs', node],
  ['packages/drawing/build/view-index.mjs', node],
  ['packages/language/build/embed.mjs', node],
  ['packages/language/build/shipped-policy.mjs', source],
  ['packages/rules/build/embed-pages.mjs', node],
  ['packages/rules/build/rule-reference.mjs', source],
  ['packages/syntax/build/generate.mjs', source],
  ['packages/language/build/artifacts.mjs', source],
  ['packages/server/build/feature-index.mjs', node],
  ['packages/extension/build/feature-index.mjs', node],
];

const failed = generators.filter(([script, with_]) => {
  if (!existsSync(`${root}${script}`)) {
    console.error(`${script} is missing.`);
    return true;
  }
  return with_([script, ...check]) !== 0;
});
process.exit(failed.length > 0 ? 1 : 0);
