import type { Ref } from '@cribwright/model';
import { type Checked, type Problem, rangeOf } from '@cribwright/workspace';
import type { FileReport, LocatedFinding, LocatedProblem, Location, TextFix } from './report.js';

/** What the report must be told about the files that a check speaks of. */
export interface Texts {
  /** The path a person would type for a file's address. */
  readonly pathOf: (uri: string) => string;
  readonly textOf: (uri: string) => string;
}

/** What a check of one file says, with every place as a path, lines and characters. */
export function fileReport(checked: Checked, texts: Texts): Omit<FileReport, 'lessons'> {
  const located = new Map(checked.problems.map((p) => [p.finding, locate(checked.uri, p, texts)]));
  return {
    path: texts.pathOf(checked.uri),
    text: texts.textOf(checked.uri),
    problems: checked.problems
      .filter((p) => p.source === 'text' && p.severity !== 'unused')
      .map((p) => problem(checked.uri, p, texts)),
    plans: checked.plans.map((reply) => ({
      title: reply.plan.title,
      reply,
      unread: reply.unread.map(({ uri, range, message }) => ({
        message,
        place: { path: texts.pathOf(uri), range },
      })),
      findings: reply.analysis.findings.map(
        (finding): LocatedFinding => ({
          finding,
          subject: subjectOf(finding.subject),
          ...(located.get(finding) ?? nowhere(checked.uri, texts)),
        }),
      ),
    })),
  };
}

/** `crib/A` is said `crib A`; `plan` stays `plan`. */
export const subjectOf = (ref: Ref): string => ref.element.replace('/', ' ');

type Placed = Pick<LocatedFinding, 'place' | 'related' | 'fixes'>;

const problem = (uri: string, p: Problem, texts: Texts): LocatedProblem => ({
  code: p.code,
  severity: p.severity === 'unused' ? 'note' : p.severity,
  message: p.message,
  ...locate(uri, p, texts),
});

function locate(uri: string, p: Problem, texts: Texts): Placed {
  const at = (file: string, span: Problem['span']): Location => ({
    path: texts.pathOf(file),
    range: rangeOf(texts.textOf(file), span),
  });
  return {
    place: at(uri, p.span),
    related: p.related.map((r) => ({ message: r.message, place: at(r.uri, r.span) })),
    fixes: p.fixes.map(
      (fix): TextFix => ({
        title: fix.title,
        safe: fix.safe,
        edits: Object.entries(fix.edits).flatMap(([file, changes]) =>
          changes.map((c) => ({ ...at(file, c.span), text: c.text })),
        ),
      }),
    ),
  };
}

const nowhere = (uri: string, texts: Texts): Placed => ({
  place: {
    path: texts.pathOf(uri),
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
  },
  related: [],
  fixes: [],
});
