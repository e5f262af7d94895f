// Writes docs/rules.md and docs/rules.es.md: every rule with what it protects against and its sources, from the rule
// modules and their pages.
// Run with `node --conditions=source --import tsx`. With `--check`, writes nothing and fails where one is out of date.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { wordsIn } from '@cribwright/messages';
import { families, familyTitle, rules } from '@cribwright/rules';
import { pageFiles, rulePage } from './embed-pages.mjs';

/** What the reference says in each language. */
const languages = {
  en: {
    file: '../docs/rules.md',
    title: 'Rules',
    about: [
      `${rules.length} checks, by what they are about. Each name opens the page of the rule: its calculation, its sources, an unsafe plan and a safe plan.`,
      'The plans on those pages are run as tests. `cribwright explain RULE` prints the same page. [En español](rules.es.md)',
    ],
    severity: 'Severity',
    severities: { danger: 'danger', warning: 'warning', note: 'note' },
    sources: 'Sources',
  },
  es: {
    file: '../docs/rules.es.md',
    title: 'Reglas',
    about: [
      `${rules.length} comprobaciones, por tema. Cada nombre abre la página de la regla: su cálculo, sus fuentes, un plan inseguro y uno seguro.`,
      'Los planes de esas páginas se comprueban como pruebas. `cribwright explain REGLA --language es` muestra la misma página. [In English](rules.md)',
    ],
    severity: 'Gravedad',
    severities: { danger: 'peligro', warning: 'advertencia', note: 'nota' },
    sources: 'Fuentes',
  },
};

/** The sources that a page lists, in one line. */
function sourcesOf(page, heading) {
  const section = page.split(/^## /m).find((text) => text.startsWith(`${heading}\n`));
  const listed = (section ?? '').match(/(?<=^- ).+(?=\.$)/gm);
  if (listed === null) throw new Error(`A page lists nothing under "${heading}": ${page.split('\n')[0]}`);
  return listed.join('; ');
}

function reference(locale) {
  const { title, about, severity, severities, sources } = languages[locale];
  const words = wordsIn(locale, 'us');
  const entry = (rule) => [
    `### [${rule.id}](../src/${rule.id}/${pageFiles[locale]})`,
    '',
    `**${words.message(rule.title)}.** ${words.message(rule.protects)}`,
    '',
    `- ${severity}: ${severities[rule.severity]}`,
    `- ${sources}: ${sourcesOf(rulePage(rule.id, locale), sources)}`,
    '',
  ];
  return [
    `# ${title}`,
    '',
    ...about,
    '',
    ...families.flatMap((family) => [
      `## ${words.message(familyTitle[family])}`,
      '',
      ...rules.filter((rule) => rule.family === family).flatMap(entry),
    ]),
  ]
    .join('\n')
    .trimEnd();
}

for (const [locale, { file }] of Object.entries(languages)) {
  const path = fileURLToPath(new URL(file, import.meta.url));
  const text = `${reference(locale)}\n`;
  if (!process.argv.includes('--check')) writeFileSync(path, text);
  else if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
    console.error(`${path} is out of date: npm run generate`);
    process.exitCode = 1;
  }
}
