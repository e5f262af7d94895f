import {
  count,
  type Message,
  message,
  name,
  quantity,
  type TermId,
  term,
  type Words,
} from '@cribwright/messages';
import type {
  BlockChange,
  FigureChange,
  FindingChange,
  LimitChange,
  LineChange,
  PlanChange,
  PlanState,
  StockChange,
} from '@cribwright/workspace';
import { type CompareReport, isWorse } from './outcome.js';

/** The words that all forms of a comparison share. Names and lines of the plan stay as their authors wrote them. */
export const titleOf = ({ before, after }: CompareReport): Message =>
  after === ''
    ? message('compare.title-here', { before: name(before) })
    : message('compare.title', { before: name(before), after: name(after) });

const verdicts = {
  unsafe: 'compare.unsafe',
  'not checked': 'compare.not-checked',
  'no danger found': 'compare.no-danger',
} as const satisfies Record<PlanState['verdict'], TermId>;

const verdictOf = (state: PlanState | undefined): Message =>
  term(state === undefined ? 'compare.no-plan' : verdicts[state.verdict]);

/** `no danger found → UNSAFE`. */
export const verdictWords = ({ before, after }: PlanChange): Message =>
  message('compare.verdict', { before: verdictOf(before), after: verdictOf(after) });

const findingKinds = {
  new: 'compare.finding-new',
  gone: 'compare.finding-gone',
  worse: 'compare.finding-worse',
  better: 'compare.finding-better',
  accepted: 'compare.finding-accepted',
  'no longer accepted': 'compare.finding-no-longer-accepted',
} as const satisfies Record<FindingChange['kind'], TermId>;

export const findingKind = ({ kind }: FindingChange): Message => term(findingKinds[kind]);

const severities = { danger: 'cli.danger', warning: 'cli.warning', note: 'cli.note' } as const;

export const severityOf = ({ severity, couldNotRun }: FindingChange): Message =>
  term(couldNotRun ? 'cli.could-not-run' : severities[severity]);

/** `crib A`, `vehicle type Flatbed`. */
export const blockName = ({ keyword, name: own }: BlockChange): string =>
  own === '' ? keyword : keyword === 'plan' ? `plan “${own}”` : `${keyword} ${own}`;

/** `courses 11 → 9`, `added: overhang 4 in`. */
export function lineWords({ key, before, after }: LineChange, words: Words): string {
  if (before === undefined) return `${words.message(term('compare.added'))}: ${after ?? ''}`;
  if (after === undefined) return `${words.message(term('compare.removed'))}: ${before}`;
  const now =
    after.startsWith(`${key} `) && before.startsWith(`${key} `) ? after.slice(key.length + 1) : after;
  return words.message(message('compare.line', { before: name(before), after: name(now) }));
}

/** `added`, `renamed, was A`, `moved, was in a.crib`: what happened to a block as a whole. */
export const blockNotes = ({ kind, renamedFrom, movedFrom }: BlockChange): readonly Message[] => [
  ...(kind === 'changed' ? [] : [term(kind === 'added' ? 'compare.added' : 'compare.removed')]),
  ...(renamedFrom === undefined ? [] : [message('compare.renamed-from', { name: name(renamedFrom) })]),
  ...(movedFrom === undefined ? [] : [message('compare.moved-from', { path: name(movedFrom) })]),
];

/** `38.5 in → 31.5 in` and, where it can be told, `−18 %`. */
export function figureWords({ before, after, by }: FigureChange, words: Words) {
  const sign = by === undefined ? '' : by > 0 ? '+' : '−';
  const share = quantity('share', Math.abs(by ?? 0), 'nearest');
  return {
    values: `${words.value(before)} → ${words.value(after)}`,
    by:
      by === undefined
        ? ''
        : words.message(message(sign === '+' ? 'compare.by-more' : 'compare.by-less', { by: share })),
  };
}

/** `LOOSER LIMIT` and `Alder Ridge County, use limit: 90 % → 95 %`. */
export const limitWords = ({ key, policy, before, after, looser }: LimitChange, words: Words) => ({
  mark: words.message(term(looser === true ? 'compare.looser' : 'compare.limit-changed')),
  text: `${words.message(message('compare.limit', { policy: name(policy), limit: name(key) }))}: ${words.value(before)} → ${words.value(after)}`,
});

/** `fir 4x4, 24 in: needs 40 → 36`, and what is short now. */
export function stockWords({
  item,
  needed: [before, after],
  short: [, short],
}: StockChange): readonly Message[] {
  const need =
    before === undefined || after === undefined
      ? message('compare.needed-unknown', { item })
      : message('compare.needed', { item, before: count(before), after: count(after) });
  return short === undefined || short === 0
    ? [need]
    : [need, message('compare.short', { short: count(short) })];
}

/** `3 plans compared, 1 plan is less safe`. */
export const summaryWords = ({ comparison }: CompareReport): readonly Message[] => [
  message('compare.compared', { count: count(comparison.compared) }),
  message('compare.worse', { count: count(comparison.plans.filter(isWorse).length) }),
];

/** Figures as people look for them: those that moved most first. What cannot be told as a share comes before. */
const byMove = (a: FigureChange, b: FigureChange): number =>
  Math.abs(b.by ?? Number.POSITIVE_INFINITY) - Math.abs(a.by ?? Number.POSITIVE_INFINITY) || 0;

/** As many figures of one plan as are listed, except in JSON. */
const mostFigures = 12;

/** The figures of a plan that are listed, those that moved most first, and how many are not. */
export function listedFigures({ figures }: PlanChange) {
  const sorted = [...figures].sort(byMove);
  return { listed: sorted.slice(0, mostFigures), more: Math.max(0, sorted.length - mostFigures) };
}
