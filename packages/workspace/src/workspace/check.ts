import type { Analysis, Finding } from '@cribwright/engine';
import type { BoundFile, LanguageProblem, TextChange } from '@cribwright/language';
import type { Elaborated, ElaboratedFile, Surroundings } from '@cribwright/language/internal';
import type { Plan } from '@cribwright/model';
import type { Span } from '@cribwright/syntax/internal';
import { planEditChanges } from '../edits/plan-edit-changes.js';
import { lessonProblems } from '../lesson/lesson-problems.js';
import type { PlanReply } from '../reply/plan-reply.js';
import type { Known } from './analyses.js';
import type { Checked, Problem, ProblemFix } from './checked.js';
import { rangeOf } from './lines.js';

/** A file as it was read and made into plans, and what its plans come to. */
export function checkedOf(
  file: BoundFile,
  elaborated: ElaboratedFile,
  around: Surroundings,
  knownOf: (plan: Plan, index: number) => Known,
): Checked {
  const plans = elaborated.plans.map((made, i) => {
    const { analysis, pending } = knownOf(made.plan, i);
    return { made, pending, reply: planReply(made, analysis) };
  });
  // What an exercise asks for is judged by the whole.
  const analyzed = plans.flatMap(({ made, pending, reply }) =>
    pending === 'loads' ? [] : [{ block: made.block, analysis: reply.analysis }],
  );
  const exercises = analyzed.length < plans.length ? [] : lessonProblems(file, around, analyzed);
  const text = [...textProblems(file, elaborated), ...exercises].map((p) => textProblem(p, file));
  const found = plans.flatMap(({ made, reply }) => findings(file.uri, made, reply));
  const pending = (['loads', 'push'] as const).find((what) => plans.some((p) => p.pending === what));
  return {
    uri: file.uri,
    version: file.version,
    state: stateOf(text.filter((p) => p.severity === 'danger').length, plans.length),
    problems: [...text, ...found],
    plans: plans.map((p) => p.reply),
    pending,
  };
}

/** What is wrong with the text, exercises left out. */
export const textProblems = (file: BoundFile, elaborated: ElaboratedFile): readonly LanguageProblem[] => [
  ...file.problems,
  ...elaborated.problems,
];

export const stateOf = (errors: number, plans: number): Checked['state'] =>
  errors > 0 ? 'errors' : plans === 0 ? 'no plan' : 'good';

function planReply({ plan, places, partial, unread }: Elaborated, analysis: Analysis): PlanReply {
  let written: PlanReply['places'] | undefined;
  return {
    plan,
    analysis,
    // After most edits nobody asks for these.
    get places() {
      written ??= Object.fromEntries(
        [...places].map(([key, { uri, span, text }]) => [key, { uri, range: rangeOf(text, span) }]),
      );
      return written;
    },
    partial,
    unread,
  };
}

const textProblem = (p: LanguageProblem, { uri, text }: BoundFile): Problem => ({
  code: p.code,
  source: 'text',
  severity: p.severity === 'error' ? 'danger' : p.severity,
  message: p.message,
  span: p.span,
  related: p.related,
  fixes: p.fixes.map((f) => ({
    title: f.title,
    safe: f.safe,
    edits: { [uri]: withLineEnds(f.edits, text) },
  })),
});

/** New lines end as those of the file do. */
const withLineEnds = (edits: readonly TextChange[], text: string): readonly TextChange[] =>
  text.includes('\r\n') ? edits.map((e) => ({ ...e, text: e.text.replace(/\r?\n/g, '\r\n') })) : edits;

function findings(uri: string, made: Elaborated, reply: PlanReply): readonly Problem[] {
  return reply.analysis.findings.map((finding) => {
    const here = [finding.at, finding.subject, made.plan.ref]
      .map((ref) => made.placeOf(ref))
      .find((place) => place.uri === uri);
    const cause = made.placeOf(finding.at);
    const far =
      cause.uri === uri
        ? []
        : [
            {
              uri: cause.uri,
              span: cause.span,
              message: finding.message,
            },
          ];
    const related = finding.related.map(({ at, message }) => ({ ...pick(made.placeOf(at)), message }));
    // After most edits nobody asks for these.
    let fixes: readonly ProblemFix[] | undefined;
    return {
      code: finding.rule,
      source: 'plan' as const,
      severity: finding.severity,
      message: finding.message,
      span: (here ?? made.placeOf(made.plan.ref)).span,
      related: [...far, ...related],
      get fixes() {
        fixes ??= fixesOf(finding, made);
        return fixes;
      },
      finding,
      plan: made.plan.title,
      units: made.plan.display,
    };
  });
}

const fixesOf = ({ fixes }: Finding, { block, text }: Elaborated): readonly ProblemFix[] =>
  fixes.flatMap(({ title, safe, edits }) => {
    const changes = planEditChanges({ block, text }, edits);
    return 'refused' in changes ? [] : [{ title, safe, edits: changes.changes }];
  });

const pick = ({ uri, span }: { uri: string; span: Span }) => ({ uri, span });
