/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis, Finding } from '@cribwright/engine';
import { message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';

/** What the checks say: what could not be checked first, then what is unsafe, then the rest, then what was accepted. */
export function Findings({
  analysis,
  words,
}: {
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const notRun = analysis.findings.filter((f) => f.couldNotRun);
  const open = analysis.findings.filter((f) => !f.couldNotRun && !f.accepted);
  const accepted = analysis.findings.filter((f) => !f.couldNotRun && f.accepted);
  const of = (severity: Finding['severity']) => open.filter((f) => f.severity === severity);
  if (analysis.findings.length === 0) return <p>{words.message(term('field-sheet.no-findings'))}</p>;
  return (
    <ul>
      {notRun.map((f, i) => (
        <li key={`notrun ${i}`}>
          <span class="notrun">{words.message(term('field-sheet.not-checked'))}</span>{' '}
          {words.message(f.message)}
        </li>
      ))}
      {of('danger').map((f, i) => (
        <li class="danger" key={`danger ${i}`}>
          {words.message(f.message)}
        </li>
      ))}
      {[...of('warning'), ...of('note')].map((f, i) => (
        <li key={`other ${i}`}>{words.message(f.message)}</li>
      ))}
      {accepted.map((f, i) => (
        <li key={`accepted ${i}`}>
          {words.message(
            message('field-sheet.accepted', {
              by: name(f.accepted?.by ?? ''),
              until: name(f.accepted?.until ?? ''),
              reason: name(f.accepted?.reason ?? ''),
              message: f.message,
            }),
          )}
        </li>
      ))}
    </ul>
  );
}

/** The limits that the policy has made looser than what they extend, each with its reason. */
export function Loosened({
  plan,
  words,
}: {
  readonly plan: Plan;
  readonly words: Words;
}): JSX.Element | undefined {
  const limits = Object.values(plan.policy.limits).filter((l) => l.loosened);
  if (limits.length === 0) return undefined;
  return (
    <section>
      <h2>{words.message(term('field-sheet.looser'))}</h2>
      <ul>
        {limits.map((l) => (
          <li key={l.key}>
            {words.message(
              l.reason === undefined
                ? message('field-sheet.looser-no-reason', { limit: name(l.key) })
                : message('field-sheet.looser-reason', { limit: name(l.key), reason: name(l.reason) }),
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
