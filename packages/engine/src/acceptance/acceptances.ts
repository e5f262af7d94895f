import type { Acceptance } from '@cribwright/model';
import type { Workings } from '../derived/workings.js';
import type { Finding } from '../finding/finding.js';

/**
 * Whether an acceptance still stands on a day. ISO dates compare as text. Without a day nobody can say, and then it
 * does not stand.
 */
export const stands = (a: Acceptance, today: string | undefined): boolean =>
  today !== undefined && isDate(today) && isDate(a.until) && today.slice(0, 10) <= a.until;

export const isDate = (text: string): boolean => /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])/.test(text);

/** Puts what a reviewer accepted on the findings that it is about. A check that could not run is never accepted. */
export const withAcceptances = (findings: readonly Finding[], w: Workings): readonly Finding[] =>
  findings.map((finding) => {
    const found = w.plan.acceptances.find(
      (a) => a.rule === finding.rule && a.on === finding.subject.element && stands(a, w.options.today),
    );
    return found === undefined || finding.couldNotRun === true
      ? finding
      : { ...finding, accepted: { by: found.by, reason: found.reason, until: found.until } };
  });
