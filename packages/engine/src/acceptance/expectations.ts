import type { Figure } from '@cribwright/messages';
import { count, list, type Message, message, name, shown, shownAs, term } from '@cribwright/messages';
import type { Expectation, Plan } from '@cribwright/model';
import { compare } from '@cribwright/units';
import type { Analysis, ExpectationResult, SupportResult } from '../analysis/analysis.js';
import { elementMessage } from '../element/element-message.js';
import type { Finding } from '../finding/finding.js';

/** Unsafe: a danger that nobody accepted, or a check that could not run. */
export const unsafe = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter((f) => (f.severity === 'danger' && f.accepted === undefined) || f.couldNotRun === true);

type Seen = Pick<Analysis, 'supports' | 'findings'>;

/** What the plan says of itself, held against what came out. Nothing holds of a plan that was not read whole. */
export const expectationResults = (plan: Plan, seen: Seen): readonly ExpectationResult[] =>
  plan.expectations.map((e) => {
    const { text, why, held } = judge(e, plan, seen);
    return plan.partial
      ? { ref: e.ref, text, held: false, why: term('expectation.partial') }
      : { ref: e.ref, text, held, why };
  });

interface Verdict {
  readonly text: Message;
  readonly held: boolean;
  readonly why: Message;
}

function judge(e: Expectation, plan: Plan, seen: Seen): Verdict {
  switch (e.kind) {
    case 'safe':
      return safe(seen.findings);
    case 'finding':
      return finding(e, plan, seen.findings);
    case 'figure':
      return figure(e, plan, seen.supports);
  }
}

const held = term('expectation.held');
const names = (found: readonly Finding[]) =>
  list(
    [...new Set(found.map((f) => f.rule))].map((rule) => name(rule)),
    'plain',
  );

function safe(findings: readonly Finding[]): Verdict {
  const text = term('expectation.safe');
  const bad = unsafe(findings);
  const blind = bad.filter((f) => f.couldNotRun === true);
  if (bad.length === 0) return { text, held: true, why: held };
  const why =
    blind.length === bad.length
      ? message('expectation.not-run', { count: count(blind.length), rules: names(blind) })
      : message('expectation.unsafe', { count: count(bad.length), rules: names(bad) });
  return { text, held: false, why };
}

function finding(
  e: Extract<Expectation, { kind: 'finding' }>,
  plan: Plan,
  findings: readonly Finding[],
): Verdict {
  const { on } = e;
  const rule = name(e.rule);
  const text =
    on === undefined
      ? message('expectation.finding-anywhere', { rule })
      : message('expectation.finding', { rule, on: elementMessage(plan, on) });
  // What could not run has not found anything, so it does not count.
  const hit = findings.some(
    (f) =>
      f.rule === e.rule &&
      f.couldNotRun !== true &&
      (on === undefined || f.subject.element === on || f.at.element === on),
  );
  return { text, held: hit, why: hit ? held : message('expectation.not-found', { rule }) };
}

function figure(
  e: Extract<Expectation, { kind: 'figure' }>,
  plan: Plan,
  supports: readonly SupportResult[],
): Verdict {
  const element = elementMessage(plan, e.on);
  const on =
    e.contact === undefined
      ? element
      : message('expectation.contact-of', { element, contact: count(e.contact) });
  const called = name(e.figure);
  const found = figureNamed(e, supports);
  if (found?.value === undefined)
    return {
      text: message('expectation.figure', { figure: called, on }),
      held: false,
      why: message('expectation.no-figure', { figure: called, on }),
    };
  const { low, high } = found.value;
  const slack = (end: number) => e.within * Math.abs(end);
  const fits =
    compare(low, e.value.low - slack(e.value.low)) >= 0 &&
    compare(high, e.value.high + slack(e.value.high)) <= 0;
  const value =
    e.value.low === e.value.high ? shownAs(found, e.value.low) : shown({ ...found, value: e.value });
  return {
    text: message('expectation.figure', { figure: called, on, value }),
    held: fits,
    why: fits ? held : message('expectation.figure-is', { figure: called, value: shown(found) }),
  };
}

/** `height limit` is the key `heightLimit`. */
const keyOf = (name: string) => name.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());

function figureNamed(
  e: Extract<Expectation, { kind: 'figure' }>,
  supports: readonly SupportResult[],
): Figure | undefined {
  const support = supports.find((s) => s.id === e.on);
  const key = keyOf(e.figure);
  if (e.contact === undefined) return support?.figures[key];
  const contact = support?.contacts.find((c) => c.number === e.contact);
  return key === 'load'
    ? contact?.load
    : key === 'capacity'
      ? contact?.capacity
      : key === 'use'
        ? contact?.use
        : undefined;
}
