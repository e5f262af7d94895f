import { type Analysis, elementMessage, type Finding, type SupportResult, tally } from '@cribwright/engine';
import { type Figure, name } from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import type { PlanReply } from '../reply/plan-reply.js';
import type { FigureChange, FindingChange, PlanChange, PlanState, StockChange } from './comparison.js';
import { limitChanges } from './limit-changes.js';

/** Names ids of the old plan as the new plan names the same elements. */
export type IdNow = (id: ElementId) => ElementId;

/** What the checks say otherwise now. One of both may be missing: a plan that is new or gone. */
export function planChange(
  before: PlanReply | undefined,
  after: PlanReply | undefined,
  idNow: IdNow,
): Pick<PlanChange, 'before' | 'after' | 'findings' | 'limits' | 'figures' | 'stock'> {
  return {
    before: before && stateOf(before),
    after: after && stateOf(after),
    findings: findingChanges(before, after, idNow),
    limits: before && after ? limitChanges(before.plan, after.plan) : [],
    figures: before && after ? figureChanges(before, after, idNow) : [],
    stock: before && after ? stockChanges(before.analysis, after.analysis) : [],
  };
}

function stateOf({ analysis, partial }: PlanReply): PlanState {
  const counts = tally(analysis.findings);
  const checked =
    !partial && counts.notRun === 0 && analysis.unchecked !== true && analysis.pending === undefined;
  return {
    tally: counts,
    partial,
    verdict: counts.danger > 0 ? 'unsafe' : checked ? 'no danger found' : 'not checked',
  };
}

interface Keyed {
  readonly key: string;
  readonly finding: Finding;
}

function findingChanges(
  before: PlanReply | undefined,
  after: PlanReply | undefined,
  idNow: IdNow,
): readonly FindingChange[] {
  const old = keyedFindings(before, idNow);
  const now = new Map(keyedFindings(after, (id) => id).map((k) => [k.key, k.finding]));
  const gone = old.filter(({ key }) => !now.has(key));
  const known = new Map(old.map((k) => [k.key, k.finding]));
  return [
    ...[...now].flatMap(([key, finding]) => {
      const kind = kindOf(known.get(key), finding);
      return kind === undefined || after === undefined
        ? []
        : [findingChange(kind, finding, after, known.get(key)?.accepted)];
    }),
    ...gone.flatMap(({ finding }) =>
      before === undefined ? [] : [findingChange('gone', finding, before, undefined)],
    ),
  ];
}

function keyedFindings(reply: PlanReply | undefined, idNow: IdNow): readonly Keyed[] {
  const counts = new Map<string, number>();
  return (reply?.analysis.findings ?? []).map((finding) => {
    const { rule, subject, at } = finding;
    const key = [rule, idNow(subject.element), idNow(at.element), at.property ?? ''].join('\n');
    const nth = counts.get(key) ?? 0;
    counts.set(key, nth + 1);
    return { key: `${key}\n${nth}`, finding };
  });
}

/** A check that could not run is no better than a danger. */
const weight = ({ severity, couldNotRun }: Finding): number =>
  couldNotRun === true ? 3 : { danger: 3, warning: 2, note: 1 }[severity];

function kindOf(old: Finding | undefined, now: Finding): FindingChange['kind'] | undefined {
  if (old === undefined) return 'new';
  if (old.accepted === undefined && now.accepted !== undefined) return 'accepted';
  if (old.accepted !== undefined && now.accepted === undefined) return 'no longer accepted';
  const by = weight(now) - weight(old);
  return by > 0 ? 'worse' : by < 0 ? 'better' : undefined;
}

const findingChange = (
  kind: FindingChange['kind'],
  finding: Finding,
  { plan }: PlanReply,
  was: Finding['accepted'],
): FindingChange => {
  const accepted = finding.accepted ?? was;
  return {
    kind,
    rule: finding.rule,
    severity: finding.severity,
    couldNotRun: finding.couldNotRun === true,
    subject:
      finding.subject.element === 'plan' ? name(plan.title) : elementMessage(plan, finding.subject.element),
    message: finding.message,
    ...(accepted === undefined ? {} : { accepted }),
  };
};

/** Share by which a figure must move to be told: less is the last digit of a solver. */
const least = 0.005;

function figureChanges(before: PlanReply, after: PlanReply, idNow: IdNow): readonly FigureChange[] {
  const old = new Map(before.analysis.supports.map((s) => [idNow(s.id), s]));
  const supports = after.analysis.supports.flatMap((s) => {
    const was = old.get(s.id);
    return was === undefined ? [] : moved(elementMessage(after.plan, s.id), was.figures, s.figures);
  });
  const bodies = after.analysis.bodies.flatMap((b) => {
    const was = before.analysis.bodies.find((o) => idNow(o.vehicle) === b.vehicle);
    const subject = elementMessage(after.plan, b.vehicle);
    return was === undefined ? [] : moved(subject, { weight: was.weight }, { weight: b.weight });
  });
  const [pushBefore, pushAfter] = [before.analysis.push, after.analysis.push];
  const push =
    pushBefore === undefined || pushAfter === undefined
      ? []
      : moved(
          elementMessage(after.plan, pushAfter.vehicle),
          { least: pushBefore.least },
          { least: pushAfter.least },
        );
  return [...supports, ...bodies, ...push];
}

function moved(
  subject: FigureChange['subject'],
  old: SupportResult['figures'],
  now: SupportResult['figures'],
): readonly FigureChange[] {
  return Object.entries(now).flatMap(([key, after]) => {
    const before = old[key];
    if (before === undefined || same(before, after)) return [];
    return [{ subject, label: after.label, before, after, by: shareMoved(before, after) }];
  });
}

function same({ value: a }: Figure, { value: b }: Figure): boolean {
  if (a === undefined || b === undefined) return a === b;
  const near = (x: number, y: number) => Math.abs(x - y) <= least * Math.max(Math.abs(x), Math.abs(y));
  return near(a.low, b.low) && near(a.high, b.high);
}

/** By the end that printing rounds to: the high one of a demand, the low one of a limit. */
function shareMoved(before: Figure, after: Figure): number | undefined {
  const end = (f: Figure) => (f.rounding === 'down' ? f.value?.low : f.value?.high);
  const [x, y] = [end(before), end(after)];
  return x === undefined || y === undefined || x === 0 ? undefined : y / x - 1;
}

function stockChanges(before: Analysis, after: Analysis): readonly StockChange[] {
  const rows = (a: Analysis) =>
    new Map((a.materials?.rows ?? []).map((r) => [`${r.kind}\n${r.piece}\n${JSON.stringify(r.item)}`, r]));
  const [old, now] = [rows(before), rows(after)];
  const keys = new Set([...old.keys(), ...now.keys()]);
  return [...keys].flatMap((key) => {
    const [was, is] = [old.get(key), now.get(key)];
    const row = is ?? was;
    if (row === undefined) return [];
    // A row that is not there needs none and lacks none.
    const most = (figure: Figure | undefined) => (figure === undefined ? 0 : figure.value?.high);
    const needed = [most(was?.needed), most(is?.needed)] as const;
    const short = [most(was?.short), most(is?.short)] as const;
    return needed[0] === needed[1] && short[0] === short[1] ? [] : [{ item: row.item, needed, short }];
  });
}
