import { caution } from '@cribwright/engine';
import { type Paint, printable } from '../terminal/paint.js';
import type { ExitCode } from './outcome.js';
import type { LocatedFinding, PlanReport, Report } from './report.js';
import { wordsOf } from './words.js';

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

/** 0: as expected. 1: not. 2: a file could not be read, or a check could not run. */
export function expectationsHeld(report: Report): ExitCode {
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
export function expectationReport(report: Report, paint: Paint): string {
  const lines = report.files.flatMap((file) =>
    file.plans.flatMap((plan) => [
      `${paint('strong', printable(plan.title))}  ${paint('quiet', printable(file.path))}`,
      ...expected(plan, paint),
      ...surprises(plan).map(
        (s) =>
          `  ${paint('danger', 'NOT EXPECTED')}  ${s.finding.rule} on ${printable(s.subject)}: ${printable(wordsOf(plan).message(s.finding.message))}`,
      ),
      ...plan.findings
        .filter((f) => f.finding.couldNotRun)
        .map(
          (f) =>
            `  ${paint('danger', 'COULD NOT RUN')}  ${printable(wordsOf(plan).message(f.finding.message))}`,
        ),
    ]),
  );
  return `${lines.join('\n')}\n\n${total(report, paint)}\n\n${paint('strong', 'Limits of this tool.')}\n${caution}\n`;
}

function expected(plan: PlanReport, paint: Paint): readonly string[] {
  const { expectations } = plan.reply.analysis;
  const say = wordsOf(plan);
  if (expectations.length === 0) return [paint('warning', '  nothing was expected: add an `expect` line')];
  return expectations.map((e) =>
    e.held
      ? `  ${paint('good', 'as expected')}  ${printable(say.message(e.text))}`
      : `  ${paint('danger', 'NOT AS EXPECTED')}  ${printable(say.message(e.text))}: ${printable(say.message(e.why))}`,
  );
}

function total(report: Report, paint: Paint): string {
  const all = report.files.flatMap((f) => f.plans.flatMap((p) => p.reply.analysis.expectations));
  const held = all.filter((e) => e.held).length;
  const odd = report.files.flatMap((f) => f.plans.flatMap(surprises)).length;
  const words = `${held} of ${all.length} expectations held; ${odd} ${odd === 1 ? 'danger' : 'dangers'} not expected`;
  return expectationsHeld(report) === 0 ? paint('good', words) : paint('danger', words);
}
