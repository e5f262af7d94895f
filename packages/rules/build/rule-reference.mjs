// Writes docs/rules.md: every rule with what it protects against, from the rule modules.
// Run with `node --conditions=source --import tsx`. With `--check`, writes nothing and fails where it is out of date.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { wordsIn } from '@cribwright/messages';
import { rules } from '@cribwright/rules';

const file = fileURLToPath(new URL('../docs/rules.md', import.meta.url));

const words = wordsIn('en', 'us');
const says = { danger: 'danger', warning: 'look again', note: 'worth knowing' };

const entry = (rule) => [
  `### [${rule.id}](../src/${rule.id}/rule.md)`,
  '',
  `**${words.message(rule.title)}.** ${words.message(rule.protects)}`,
  '',
  `- Says: ${says[rule.severity]}`,
  ...(rule.compares.length > 0 ? [`- Compares: ${rule.compares.join('; ')}`] : []),
  `- Sources: ${[...new Set(rule.sources.map(words.source))].join('; ')}`,
  '',
];

const families = [...new Set(rules.map((rule) => rule.family))];
const text = [
  '# The rules',
  '',
  `${rules.length} checks, by what they are about. Each name opens the rule's page: its sum, its sources, an unsafe and a safe plan.`,
  'The plans on those pages are run as tests. `cribwright explain RULE` prints the same page.',
  '',
  ...families.flatMap((family) => [
    `## ${family[0].toUpperCase()}${family.slice(1)}`,
    '',
    ...rules.filter((rule) => rule.family === family).flatMap(entry),
  ]),
]
  .join('\n')
  .trimEnd();

const now = existsSync(file) ? readFileSync(file, 'utf8') : '';
if (!process.argv.includes('--check')) writeFileSync(file, `${text}\n`);
else if (now !== `${text}\n`) {
  console.error(`${file} is out of date: npm run generate`);
  process.exitCode = 1;
}
