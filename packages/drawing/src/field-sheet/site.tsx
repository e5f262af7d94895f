/** @jsxRuntime automatic @jsxImportSource preact */

import { term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { siteLines } from '../site/site-lines.js';

/** The head of a sheet for a plan that is written for a site: where it is, whom to call, what to mind there. */
export function SiteFacts({
  plan,
  words,
}: {
  readonly plan: Plan;
  readonly words: Words;
}): JSX.Element | undefined {
  if (plan.site === undefined) return undefined;
  return (
    <>
      <h2>
        {words.message(term('site.heading'))}: {plan.site.name}
      </h2>
      <ul class="site">
        {siteLines(plan.site).map((line) => (
          <li key={words.message(line)}>{words.message(line)}</li>
        ))}
      </ul>
    </>
  );
}
