import { count, message, term, type Words } from '@cribwright/messages';
import type { BlockChange, PlanChange } from '@cribwright/workspace';
import type { Speech } from '../report/words.js';
import { printable } from '../terminal/paint.js';
import {
  blockName,
  blockNotes,
  figureWords,
  findingKind,
  limitWords,
  lineWords,
  listedFigures,
  severityOf,
  stockWords,
  summaryWords,
  titleOf,
  verdictWords,
} from './compare-words.js';
import { type CompareReport, isWorse } from './outcome.js';

/** The comparison as Markdown: a comment on a pull request. */
export function compareMarkdown(report: CompareReport, speech: Speech): string {
  const { words } = speech;
  const say = (id: Parameters<typeof term>[0]) => words.message(term(id));
  const { blocks, plans } = report.comparison;
  const lines = [
    `## ${safe(words.message(titleOf(report)))}`,
    '',
    ...(report.unreadable.length === 0
      ? []
      : [
          `**${say('compare.not-all-compared')}**`,
          '',
          ...report.unreadable.map(({ path, why }) => `- ${code(path)}: ${safe(words.message(why))}`),
          '',
        ]),
    `${summaryWords(report).map(words.message).join(', ')}.`,
    '',
    ...(blocks.length + plans.length === 0 ? [say('compare.no-change'), ''] : []),
    ...(plans.length === 0
      ? []
      : [
          `| ${say('compare.plans')} | ${say('compare.verdict-heading')} |`,
          '| --- | --- |',
          ...plans.map((p) => {
            const verdict = safe(speech.wordsFor(p).message(verdictWords(p)));
            return `| ${safe(p.title)} ${p.path === '' ? '' : `(${code(p.path)})`} | ${isWorse(p) ? `**${verdict}**` : verdict} |`;
          }),
          '',
        ]),
    ...plans.flatMap((p) => planLines(p, speech.wordsFor(p))),
    ...(blocks.length === 0 ? [] : [`### ${say('compare.changes')}`, '']),
    ...blocks.flatMap((b) => [...blockLines(b, 0, words)]),
    '',
    `**${say('caution.heading')}** ${say('caution.text')}`,
  ];
  return `${lines.join('\n')}\n`;
}

function planLines(plan: PlanChange, words: Words): readonly string[] {
  const say = (id: Parameters<typeof term>[0]) => words.message(term(id));
  const { listed, more } = listedFigures(plan);
  if (plan.findings.length + plan.limits.length + listed.length + plan.stock.length === 0) return [];
  return [
    `### ${safe(plan.title)}`,
    '',
    ...plan.findings.map(
      (f) =>
        `- ${words.message(findingKind(f))} **${words.message(severityOf(f))}** ${code(f.rule)} ${safe(words.message(f.subject))}: ${safe(words.message(f.message))}`,
    ),
    ...plan.limits.map((l) => {
      const { mark, text } = limitWords(l, words);
      return `- **${mark}** ${safe(text)}`;
    }),
    ...(plan.findings.length + plan.limits.length === 0 ? [] : ['']),
    ...(listed.length === 0
      ? []
      : [
          `| ${say('compare.element')} | ${say('compare.figure')} | ${say('compare.before')} → ${say('compare.after')} | ${say('compare.change')} |`,
          '| --- | --- | --- | ---: |',
          ...listed.map((f) => {
            const { values, by } = figureWords(f, words);
            return `| ${safe(words.message(f.subject))} | ${safe(words.message(f.label))} | ${safe(values)} | ${safe(by)} |`;
          }),
          '',
          ...(more > 0 ? [words.message(message('compare.more-figures', { count: count(more) })), ''] : []),
        ]),
    ...plan.stock.map((s) => `- ${safe(stockWords(s).map(words.message).join('; '))}`),
    ...(plan.stock.length === 0 ? [] : ['']),
  ];
}

function blockLines(block: BlockChange, depth: number, words: Words): readonly string[] {
  const indent = '  '.repeat(depth);
  const notes = blockNotes(block).map(words.message).join(', ');
  const { path, line } = block.after ?? block.before ?? { path: '', line: 1 };
  const where = depth === 0 && path !== '' ? ` ${code(`${path}:${line}`)}` : '';
  const head = `${indent}- **${safe(blockName(block))}**${notes === '' ? '' : ` ${safe(notes)}`}${where}`;
  if (block.kind !== 'changed') return [head];
  return [
    head,
    ...block.lines.map((l) => `${indent}  - ${code(lineWords(l, words))}`),
    ...block.blocks.flatMap((b) => blockLines(b, depth + 1, words)),
  ];
}

/** Text of a plan that may stand in Markdown without being read as part of it. */
const safe = (text: string): string =>
  printable(text)
    .replace(/[\r\n]+/g, ' ')
    .replace(/[\\`*_{}[\]<>#|~!@&]/g, (c) =>
      c === '<' ? '&lt;' : c === '&' ? '&amp;' : c === '@' ? '@\u200b' : `\\${c}`,
    );

/** Text of a plan as code, whatever signs are in it. */
function code(text: string): string {
  const row = printable(text)
    .replace(/[\r\n]+/g, ' ')
    .replaceAll('|', '\\|');
  const longest = Math.max(0, ...[...row.matchAll(/`+/g)].map((m) => m[0].length));
  const fence = '`'.repeat(longest + 1);
  return longest === 0 ? `\`${row}\`` : `${fence} ${row} ${fence}`;
}
