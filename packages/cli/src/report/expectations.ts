import { count, message, name, term, type Words } from '@cribwright/messages';
import { type Paint, printable } from '../terminal/paint.js';
import type { ExitCode } from './outcome.js';
import type { CheckReport, LocatedFinding, PlanReport } from './report.js';
import { plainSpeech, type Speech } from './words.js';

/** Dangers of a plan that none of its `expect` lines names, and nobody accepted. */
export function surprises(plan: PlanReport): readonly LocatedFinding[] {
  const named = plan.reply.plan.expectations.flatMap((e) => (e.kind === 'finding' ? [e] : []));
  return plan.findings.filter(
    ({ finding: f }) =>
      f.severity === 'danger' &&
      !f.accepted &&
      !f.couldNotRun &&
      f.rule !== 'expectation-unmet' &&
      !named.some((e) => e.rule === f.rule && (e.on === undefined || e.on === f.subject.element)),
  );
}

/** The exit code, without a unit. 0: as expected. 1: not. 2: a file could not be read, or a check could not run. */
export function expectationsHeld(report: CheckReport): ExitCode {
  if (report.unreadable.length > 0) return 2;
  const plans = report.files.flatMap((f) => f.plans);
  const missed = plans.some(
    (p) => p.reply.partial || p.reply.analysis.expectations.some((e) => !e.held) || surprises(p).length > 0,
  );
  const broken = report.files.some((f) => f.problems.some((p) => p.severity === 'danger'));
  if (missed || broken) return 1;
  return plans.some((p) => p.findings.some((f) => f.finding.couldNotRun)) ? 2 : 0;
}

/** One line for each expectation, the misses with their reason. */
export function expectationReport(report: CheckReport, paint: Paint, speech: Speech = plainSpeech): string {
  const { words, wordsOf } = speech;
  const lines = report.files.flatMap((file) =>
    file.plans.flatMap((plan) => [
      `${paint('strong', printable(plan.title))}  ${paint('quiet', printable(file.path))}`,
      ...expected(plan, paint, wordsOf(plan)),
      ...surprises(plan).map(
        (s) =>
          `  ${paint('danger', words.message(term('cli.not-expected')))}  ${printable(wordsOf(plan).message(message('cli.finding-on', { rule: name(s.finding.rule), subject: name(s.subject), message: s.finding.message })))}`,
      ),
      ...plan.findings
        .filter((f) => f.finding.couldNotRun)
        .map(
          (f) =>
            `  ${paint('danger', words.message(term('cli.could-not-run')))}  ${printable(wordsOf(plan).message(f.finding.message))}`,
        ),
    ]),
  );
  return `${lines.join('\n')}\n\n${total(report, paint, words)}\n\n${paint('strong', words.message(term('caution.heading')))}\n${words.message(term('caution.text'))}\n`;
}

function expected(plan: PlanReport, paint: Paint, say: Words): readonly string[] {
  const { expectations } = plan.reply.analysis;
  if (expectations.length === 0) return [paint('warning', `  ${say.message(term('cli.nothing-expected'))}`)];
  return expectations.map((e) =>
    e.held
      ? `  ${paint('good', say.message(term('cli.as-expected')))}  ${printable(say.message(e.text))}`
      : `  ${paint('danger', say.message(term('cli.not-as-expected')))}  ${printable(say.message(e.text))}: ${printable(say.message(e.why))}`,
  );
}

function total(report: CheckReport, paint: Paint, words: Words): string {
  const all = report.files.flatMap((f) => f.plans.flatMap((p) => p.reply.analysis.expectations));
  const held = all.filter((e) => e.held).length;
  const odd = report.files.flatMap((f) => f.plans.flatMap(surprises)).length;
  const text = words.message(
    message('cli.expectations-held', { held: count(held), all: count(all.length), odd: count(odd) }),
  );
  return expectationsHeld(report) === 0 ? paint('good', text) : paint('danger', text);
}
