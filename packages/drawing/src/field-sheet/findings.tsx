/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis, Finding } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
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
  if (analysis.findings.length === 0) return <p>The checks found nothing. They do not see the scene.</p>;
  return (
    <ul>
      {notRun.map((f, i) => (
        <li key={`notrun ${i}`}>
          <span class="notrun">not checked</span> {words.message(f.message)}
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
          Accepted by {f.accepted?.by} until {f.accepted?.until}, because {f.accepted?.reason}:{' '}
          {words.message(f.message)}
        </li>
      ))}
    </ul>
  );
}

/** The limits that the policy has made looser than what they extend, each with its reason. */
export function Loosened({ plan }: { readonly plan: Plan }): JSX.Element | undefined {
  const limits = Object.values(plan.policy.limits).filter((l) => l.loosened);
  if (limits.length === 0) return undefined;
  return (
    <section>
      <h2>Looser than the shipped policy</h2>
      <ul>
        {limits.map((l) => (
          <li key={l.key}>
            {l.key}: {l.reason ?? 'no reason given'}
          </li>
        ))}
      </ul>
    </section>
  );
}
