import { count, message, term, type Words } from '@cribwright/messages';
import type { BlockChange, PlanChange } from '@cribwright/workspace';
import type { Speech } from '../report/words.js';
import { type Paint, printable } from '../terminal/paint.js';
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
import { type CompareReport, isWorse, isWorseFinding } from './outcome.js';

/** The comparison for people, plan by plan. The limits of the tool are last. */
export function compareText(report: CompareReport, paint: Paint, speech: Speech): string {
  const { words } = speech;
  const { blocks, plans } = report.comparison;
  const planOf = (block: BlockChange) =>
    plans.find((p) => block.keyword === 'plan' && p.title === block.name && p.path === pathOf(block));
  const told = new Set(blocks.map(planOf));
  const lines = [
    paint('strong', printable(words.message(titleOf(report)))),
    '',
    ...report.unreadable.map(
      ({ path, why }) =>
        `${paint('danger', words.message(term('cli.could-not-read')))}  ${printable(path)}: ${printable(words.message(why))}`,
    ),
    ...(report.unreadable.length === 0 ? [] : [words.message(term('compare.not-all-compared')), '']),
    ...blocks.flatMap((block) => {
      const plan = planOf(block);
      const say = plan === undefined ? words : speech.wordsFor(plan);
      return [
        ...blockLines(block, 0, paint, say),
        ...(plan === undefined ? [] : planLines(plan, paint, say)),
        '',
      ];
    }),
    ...plans
      .filter((p) => !told.has(p))
      .flatMap((plan) => [
        `${paint('strong', `plan “${printable(plan.title)}”`)}  ${paint('quiet', printable(plan.path))}`,
        `  ${words.message(term('compare.by-use'))}`,
        ...planLines(plan, paint, speech.wordsFor(plan)),
        '',
      ]),
    ...(blocks.length + plans.length === 0 ? [words.message(term('compare.no-change')), ''] : []),
    `${summaryWords(report).map(words.message).join(', ')}.`,
    '',
    paint('strong', words.message(term('caution.heading'))),
    words.message(term('caution.text')),
  ];
  return `${lines.join('\n')}\n`;
}

const pathOf = ({ before, after }: BlockChange): string => (after ?? before)?.path ?? '';

function blockLines(block: BlockChange, depth: number, paint: Paint, words: Words): readonly string[] {
  const indent = '  '.repeat(depth);
  const notes = blockNotes(block).map(words.message).join(', ');
  const path = depth === 0 && pathOf(block) !== '' ? `  ${paint('quiet', printable(pathOf(block)))}` : '';
  const head = `${indent}${paint('strong', printable(blockName(block)))}${notes === '' ? '' : `  ${printable(notes)}`}${path}`;
  // Of what is new or gone the name is enough: its lines are in the text.
  if (block.kind !== 'changed') return [head];
  return [
    head,
    ...block.lines.map((l) => `${indent}  ${printable(lineWords(l, words))}`),
    ...block.blocks.flatMap((b) => blockLines(b, depth + 1, paint, words)),
  ];
}

function planLines(plan: PlanChange, paint: Paint, words: Words): readonly string[] {
  const tone = isWorse(plan) ? 'danger' : 'quiet';
  const { listed, more } = listedFigures(plan);
  return [
    `  ${paint(tone, words.message(verdictWords(plan)))}`,
    ...plan.findings.map(
      (f) =>
        `  ${paint(isWorseFinding(f) ? 'danger' : 'quiet', `${words.message(findingKind(f))} ${words.message(severityOf(f))}`)}  ${paint('strong', f.rule)}  ${printable(words.message(f.subject))}: ${printable(words.message(f.message))}`,
    ),
    ...plan.limits.map((l) => {
      const { mark, text } = limitWords(l, words);
      return `  ${paint(l.looser === true ? 'danger' : 'quiet', mark)}  ${printable(text)}`;
    }),
    ...listed.map((f) => {
      const { values, by } = figureWords(f, words);
      return `  ${printable(words.message(f.subject))}, ${words.message(f.label)}: ${values}${by === '' ? '' : `  ${paint('quiet', by)}`}`;
    }),
    ...(more > 0 ? [`  ${words.message(message('compare.more-figures', { count: count(more) }))}`] : []),
    ...plan.stock.map((s) => `  ${printable(stockWords(s).map(words.message).join('; '))}`),
  ];
}
