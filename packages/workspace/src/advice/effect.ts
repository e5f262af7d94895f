import type { Figure, Phrase } from '@cribwright/messages';
import type { PlanReply } from '../reply/plan-reply.js';
import type { Checked, Problem } from '../workspace/checked.js';
import { problemName } from './unsafe-problem.js';

/** What a change does to the figure that a problem is about: the worst contact's load, the gap, the pressure. */
export interface Effect {
  readonly label: Phrase;
  readonly before: Figure;
  readonly after: Figure;
}

/** `undefined` where the problem is about no figure, or its element has none of that kind afterward. */
export function effectOf(problem: Problem, after: Checked): Effect | undefined {
  const reply = after.plans.find((p) => p.plan.title === problem.plan);
  const remains = after.problems.find((p) => problemName(p) === problemName(problem))?.finding;
  for (const before of problem.finding?.figures ?? []) {
    if (before.value === undefined) continue;
    const now =
      remains?.figures.find((f) => f.key === before.key) ??
      (reply && figureOf(problem.finding?.subject.element ?? '', before, reply));
    if (now?.value !== undefined && now.quantity === before.quantity && !same(before, now))
      return { label: before.label, before, after: now };
  }
  return undefined;
}

const same = ({ value: a }: Figure, { value: b }: Figure): boolean =>
  a !== undefined && b !== undefined && a.low === b.low && a.high === b.high;

/** The figure of the same key on an element of a plan; of a crib's load that of its hardest pressed contact. */
function figureOf(element: string, { key }: Figure, { analysis }: PlanReply): Figure | undefined {
  const support = analysis.supports.find((s) => s.id === element);
  const contacts = (support?.contacts ?? []).flatMap((c) => (key === 'load' ? (c.load ?? []) : []));
  const worst = contacts.reduce<Figure | undefined>(
    (most, next) => ((next.value?.high ?? 0) > (most?.value?.high ?? -1) ? next : most),
    undefined,
  );
  const ground = analysis.ground.find((g) => g.element === element);
  const push = analysis.push?.vehicle === element && key === 'share' ? analysis.push.least : undefined;
  return (
    worst ??
    (key === 'pressure' || key === 'edge' ? ground?.[key] : undefined) ??
    push ??
    support?.figures[key]
  );
}
