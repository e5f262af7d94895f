import { caution, type Finding } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import { group } from '@cribwright/units';
import { type Paint, printable } from '../terminal/paint.js';
import { quote } from '../terminal/quote.js';

import { sumLines } from './figure-text.js';
import { tally } from './outcome.js';
import type { FileReport, LocatedFinding, LocatedProblem, PlanReport, Report } from './report.js';
import { shownProblems } from './shown-problems.js';
import { words, wordsOf } from './words.js';

/** The report for people: each finding with its line, its sum and what would make it right. The caution is last. */
export function textReport(report: Report, paint: Paint): string {
  const texts = new Map(report.files.map((f) => [f.path, f.text]));
  const lines = [
    ...report.unreadable.flatMap((u) => [
      `${paint('danger', 'COULD NOT READ')}  ${printable(u.path)}: ${printable(u.why)}`,
      '',
    ]),
    ...report.files.flatMap((f) => fileLines(f, texts, paint)),
    summary(report, paint),
    '',
    paint('strong', 'Limits of this tool.'),
    caution,
  ];
  return `${lines.join('\n')}\n`;
}

function fileLines(file: FileReport, texts: ReadonlyMap<string, string>, paint: Paint): readonly string[] {
  const { shown, leftOut } = shownProblems(file);
  const problems = shown.flatMap((p) => problemLines(p, texts, paint));
  const more =
    leftOut === 0
      ? []
      : [paint('danger', `and ${group(leftOut)} more of these in ${printable(file.path)}`), ''];
  return [...problems, ...more, ...file.plans.flatMap((p) => planLines(p, file.path, texts, paint))];
}

function problemLines(
  problem: LocatedProblem,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
): readonly string[] {
  const label = problem.severity === 'danger' ? 'ERROR' : problem.severity.toUpperCase();
  return [
    heading(paint(problem.severity, label), problem.code, '', problem, paint),
    `  ${printable(words.message(problem.message))}`,
    ...quote(texts.get(problem.place.path) ?? '', problem.place.range, paint),
    ...problem.fixes.map((f) => `  ${paint('good', 'fix')}  ${printable(words.message(f.title))}`),
    '',
  ];
}

function planLines(
  plan: PlanReport,
  path: string,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
): readonly string[] {
  const say = wordsOf(plan);
  const missed = plan.reply.analysis.expectations.filter((e) => !e.held);
  const met = plan.reply.analysis.expectations.length - missed.length;
  const word = plan.findings.length === 0 && !plan.reply.partial ? 'nothing found' : '';
  return [
    `${paint('strong', printable(plan.title))}  ${paint('quiet', printable(path))}`,
    ...notWholeLines(plan, paint),
    ...(word ? [`  ${word}`] : []),
    ...(met > 0 ? [`  ${met} expected, and so it is`] : []),
    ...missed.map((e) =>
      paint('danger', `  expected ${printable(say.message(e.text))}, but ${printable(say.message(e.why))}`),
    ),
    '',
    ...plan.findings.flatMap((f) => findingLines(f, texts, paint, say)),
  ];
}

/** As many places of one plan as are listed. */
const mostUnread = 12;

function notWholeLines({ reply, unread }: PlanReport, paint: Paint): readonly string[] {
  if (!reply.partial) return [];
  const left = unread.length - mostUnread;
  return [
    paint('danger', '  NOT READ WHOLE. What is missing was not checked, and nothing here counts as safe.'),
    ...unread
      .slice(0, mostUnread)
      .map((u) => `  not read  ${paint('quiet', printable(at(u)))}  ${printable(words.message(u.message))}`),
    ...(left > 0 ? [`  not read  ${group(left)} more`] : []),
  ];
}

function findingLines(
  found: LocatedFinding,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
  say: Words,
): readonly string[] {
  const { finding } = found;
  return [
    heading(label(finding, paint), finding.rule, found.subject, found, paint),
    `  ${printable(say.message(finding.message))}`,
    ...quote(texts.get(found.place.path) ?? '', found.place.range, paint),
    ...sumLines(finding.figures, paint, say),
    ...(finding.governs === undefined ? [] : [`  governs  ${printable(say.message(finding.governs))}`]),
    ...found.related.map(
      (r) => `  see      ${printable(say.message(r.message))} ${paint('quiet', printable(at(r)))}`,
    ),
    ...found.fixes.map((f) => `  ${paint('good', 'fix')}      ${printable(say.message(f.title))}`),
    ...(finding.accepted === undefined
      ? []
      : [
          `  accepted by ${printable(finding.accepted.by)} until ${printable(finding.accepted.until)}: ${printable(finding.accepted.reason)}`,
        ]),
    '',
  ];
}

function label(finding: Finding, paint: Paint): string {
  if (finding.couldNotRun) return paint('danger', 'COULD NOT RUN');
  const word = finding.severity.toUpperCase();
  return finding.accepted ? paint('quiet', `ACCEPTED ${word}`) : paint(finding.severity, word);
}

function heading(
  word: string,
  rule: string,
  subject: string,
  where: LocatedFinding | LocatedProblem,
  paint: Paint,
): string {
  const about = subject ? `  ${printable(subject)}` : '';
  return `${word}  ${paint('strong', rule)}${about}  ${paint('quiet', printable(at(where)))}`;
}

const at = ({ place }: Pick<LocatedFinding, 'place'>): string =>
  `${place.path}:${place.range.start.line + 1}:${place.range.start.character + 1}`;

function summary(report: Report, paint: Paint): string {
  const t = tally(report);
  const of = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
  const counts = [
    of(t.plans, 'plan', 'plans'),
    paint(t.danger > 0 ? 'danger' : 'quiet', of(t.danger, 'danger', 'dangers')),
    of(t.warning, 'warning', 'warnings'),
    of(t.note, 'note', 'notes'),
    ...(t.accepted > 0 ? [`${t.accepted} accepted`] : []),
  ].join(', ');
  const silent = [
    ...(t.notRun > 0 ? [`${of(t.notRun, 'check', 'checks')} could not run`] : []),
    ...(t.unreadable > 0 ? [`${of(t.unreadable, 'path', 'paths')} could not be read`] : []),
  ];
  return silent.length === 0 ? counts : `${counts}. ${paint('danger', `${silent.join(', ')}.`)}`;
}
