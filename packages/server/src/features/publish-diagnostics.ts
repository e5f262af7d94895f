import type { BoundFile } from '@cribwright/language';
import { count, message as messageOf, name, term } from '@cribwright/messages';
import type { Checked, Problem } from '@cribwright/workspace/internal';
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { FeatureContext } from '../context/feature-context.js';
import { rangeOf } from '../context/positions.js';
import { say as translate } from '../l10n/say.js';
import { unitsOfProblem } from './units-for.js';

/** `textDocument/publishDiagnostics`: what is wrong with a file, where, and by which rule. */
export function diagnosticsOf(desk: FeatureContext, file: BoundFile, checked: Checked): Diagnostic[] {
  const { problems } = checked;
  if (problems.length <= most) return problems.map((problem) => diagnosticOf(desk, file, problem));
  // The worst are kept. How many are not shown is said as loudly as they are.
  const worst = [...problems].sort((a, b) => severities[a.severity] - severities[b.severity]).slice(0, most);
  return [
    ...worst.map((problem) => diagnosticOf(desk, file, problem)),
    {
      range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } },
      severity: DiagnosticSeverity.Error,
      source: 'cribwright',
      code: 'more-problems',
      message: translate(messageOf('editor.more', { count: count(problems.length - most) }), desk.locale),
    },
  ];
}

/** More than these in one file are of no use to anyone, and slow an editor down. */
const most = 500;

export function diagnosticOf(desk: FeatureContext, file: BoundFile, problem: Problem): Diagnostic {
  const units = unitsOfProblem(desk, problem);
  const related = problem.related.flatMap(({ uri, span, message }) => {
    const home = desk.workspace.bound(uri);
    return home
      ? [{ location: { uri, range: rangeOf(home, span) }, message: translate(message, desk.locale, units) }]
      : [];
  });
  const loud = problem.finding?.couldNotRun === true;
  const accepted = loud ? undefined : problem.finding?.accepted;
  const message = translate(
    accepted === undefined
      ? problem.message
      : messageOf('editor.accepted', {
          by: name(accepted.by),
          until: name(accepted.until),
          reason: name(accepted.reason),
          message: problem.message,
        }),
    desk.locale,
    units,
  );
  return {
    range: rangeOf(file, problem.span),
    severity: accepted === undefined ? severities[problem.severity] : DiagnosticSeverity.Information,
    code: problem.code,
    codeDescription: { href: rulePage(problem.code) },
    source: 'cribwright',
    message: loud ? `${message} ${translate(term('editor.could-not-run'), desk.locale)}` : message,
    ...(problem.severity === 'unused' ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length > 0 ? { relatedInformation: related } : {}),
  };
}

/** Opened by the editor itself; needs no network. */
export const rulePage = (code: string): string => `cribwright:/rules/${code}.md`;

const severities: Readonly<Record<Problem['severity'], DiagnosticSeverity>> = {
  danger: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Information,
  unused: DiagnosticSeverity.Hint,
};
