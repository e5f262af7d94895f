import type { Finding } from '@cribwright/engine';
import { count, list, message, name, term, type Words } from '@cribwright/messages';
import { group } from '@cribwright/units';
import { type Paint, printable } from '../terminal/paint.js';
import { sumLines } from './figure-text.js';
import { tally } from './outcome.js';
import { quote } from './quote.js';
import type { CheckReport, FileReport, LocatedFinding, LocatedProblem, PlanReport } from './report.js';
import { shownProblems } from './shown-problems.js';
import { plainSpeech, type Speech } from './words.js';

/** The report for people: each finding with its line, its sum and what would make it right. The caution is last. */
export function textReport(report: CheckReport, paint: Paint, speech: Speech = plainSpeech): string {
  const { words } = speech;
  const texts = new Map(report.files.map((f) => [f.path, f.text]));
  const lines = [
    ...report.unreadable.flatMap((u) => [
      `${paint('danger', words.message(term('cli.could-not-read')))}  ${printable(u.path)}: ${printable(words.message(u.why))}`,
      '',
    ]),
    ...report.files.flatMap((f) => fileLines(f, texts, paint, speech)),
    summary(report, paint, words),
    '',
    paint('strong', words.message(term('caution.heading'))),
    words.message(term('caution.text')),
  ];
  return `${lines.join('\n')}\n`;
}

function fileLines(
  file: FileReport,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
  speech: Speech,
): readonly string[] {
  const { words } = speech;
  const { shown, leftOut } = shownProblems(file);
  const problems = shown.flatMap((p) => problemLines(p, texts, paint, words));
  const more =
    leftOut === 0
      ? []
      : [
          paint(
            'danger',
            words.message(
              message('cli.more-in', { count: name(group(leftOut)), path: name(printable(file.path)) }),
            ),
          ),
          '',
        ];
  return [...problems, ...more, ...file.plans.flatMap((p) => planLines(p, file.path, texts, paint, speech))];
}

function problemLines(
  problem: LocatedProblem,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
  words: Words,
): readonly string[] {
  const label = words.message(
    term(problem.severity === 'danger' ? 'cli.error' : severities[problem.severity]),
  );
  return [
    heading(paint(problem.severity, label), problem.code, '', problem, paint),
    `  ${printable(words.message(problem.message))}`,
    ...quote(texts.get(problem.place.path) ?? '', problem.place.range, paint),
    ...problem.fixes.map(
      (f) => `  ${paint('good', words.message(term('cli.fix')))}  ${printable(words.message(f.title))}`,
    ),
    '',
  ];
}

function planLines(
  plan: PlanReport,
  path: string,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
  speech: Speech,
): readonly string[] {
  const say = speech.wordsOf(plan);
  const missed = plan.reply.analysis.expectations.filter((e) => !e.held);
  const met = plan.reply.analysis.expectations.length - missed.length;
  const word =
    plan.findings.length === 0 && !plan.reply.partial ? say.message(term('cli.nothing-found')) : '';
  return [
    `${paint('strong', printable(plan.title))}  ${paint('quiet', printable(path))}`,
    ...notWholeLines(plan, paint, say),
    ...(word ? [`  ${word}`] : []),
    ...(met > 0 ? [`  ${say.message(message('cli.expected-and-so', { count: count(met) }))}`] : []),
    ...missed.map((e) =>
      paint(
        'danger',
        `  ${printable(say.message(message('cli.expected-but', { text: e.text, why: e.why })))}`,
      ),
    ),
    '',
    ...plan.findings.flatMap((f) => findingLines(f, texts, paint, say)),
  ];
}

/** As many places of one plan as are listed. */
const mostUnread = 12;

function notWholeLines({ reply, unread }: PlanReport, paint: Paint, say: Words): readonly string[] {
  if (!reply.partial) return [];
  const left = unread.length - mostUnread;
  const notRead = say.message(term('cli.not-read'));
  return [
    paint('danger', `  ${say.message(term('cli.not-whole'))}`),
    ...unread
      .slice(0, mostUnread)
      .map((u) => `  ${notRead}  ${paint('quiet', printable(at(u)))}  ${printable(say.message(u.message))}`),
    ...(left > 0 ? [`  ${notRead}  ${say.message(message('cli.more', { count: name(group(left)) }))}`] : []),
  ];
}

function findingLines(
  found: LocatedFinding,
  texts: ReadonlyMap<string, string>,
  paint: Paint,
  say: Words,
): readonly string[] {
  const { finding } = found;
  const head = (id: 'cli.governs' | 'cli.see' | 'cli.fix', tone?: 'good') => {
    const text = say.message(term(id));
    return `${tone === undefined ? text : paint(tone, text)}${' '.repeat(Math.max(1, 9 - text.length))}`;
  };
  return [
    heading(label(finding, paint, say), finding.rule, found.subject, found, paint),
    `  ${printable(say.message(finding.message))}`,
    ...quote(texts.get(found.place.path) ?? '', found.place.range, paint),
    ...sumLines(finding.figures, paint, say),
    ...(finding.governs === undefined
      ? []
      : [`  ${head('cli.governs')}${printable(say.message(finding.governs))}`]),
    ...found.related.map(
      (r) => `  ${head('cli.see')}${printable(say.message(r.message))} ${paint('quiet', printable(at(r)))}`,
    ),
    ...found.fixes.map((f) => `  ${head('cli.fix', 'good')}${printable(say.message(f.title))}`),
    ...(finding.accepted === undefined
      ? []
      : [`  ${printable(say.message(message('cli.accepted-by', acceptance(finding.accepted))))}`]),
    '',
  ];
}

const acceptance = ({ by, until, reason }: NonNullable<Finding['accepted']>) => ({
  by: name(by),
  until: name(until),
  reason: name(reason),
});

const severities = { danger: 'cli.danger', warning: 'cli.warning', note: 'cli.note' } as const;

function label(finding: Finding, paint: Paint, say: Words): string {
  if (finding.couldNotRun) return paint('danger', say.message(term('cli.could-not-run')));
  const severity = term(severities[finding.severity]);
  return finding.accepted
    ? paint('quiet', say.message(message('cli.accepted-severity', { severity })))
    : paint(finding.severity, say.message(severity));
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

function summary(report: CheckReport, paint: Paint, words: Words): string {
  const t = tally(report);
  const of = (
    id: 'cli.plans' | 'cli.dangers' | 'cli.warnings' | 'cli.notes' | 'cli.accepted',
    n: number,
  ): string => words.message(message(id, { count: count(n) }));
  const counts = [
    of('cli.plans', t.plans),
    paint(t.danger > 0 ? 'danger' : 'quiet', of('cli.dangers', t.danger)),
    of('cli.warnings', t.warning),
    of('cli.notes', t.note),
    ...(t.accepted > 0 ? [of('cli.accepted', t.accepted)] : []),
  ].join(', ');
  const silent = list(
    [
      ...(t.notRun > 0 ? [message('cli.checks-not-run', { count: count(t.notRun) })] : []),
      ...(t.unreadable > 0 ? [message('cli.paths-not-read', { count: count(t.unreadable) })] : []),
    ],
    'plain',
  );
  return silent.items.length === 0 ? counts : `${counts}. ${paint('danger', `${words.message(silent)}.`)}`;
}
