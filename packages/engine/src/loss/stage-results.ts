import { list, type Message, message, name, term } from '@cribwright/messages';
import type { LoadCase, Reaction, StageResult } from '../analysis/analysis.js';
import { at } from '../resting/at.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { type CaseRun, holds } from './case-run.js';
import { cornerWords } from './corner-words.js';
import { freeEnd } from './free-end.js';
import type { ComponentRun, LossWorking } from './loss-working.js';
import type { Loss } from './losses.js';
import { paperOf } from './worked-case.js';

/** Stages as the views see them: what stands, what each contact carries, and what a loss changes. */
export function stagesOf(w: SupportWorkings, resting: LossWorking): readonly StageResult[] {
  let cases: Cases | undefined;
  return resting.stages.map(({ id, title, step, standing, adding }, s) => {
    const changed = resting.parts.some(({ stages }) => stages[s] !== stages[s - 1]);
    const now = cases === undefined || changed ? casesAt(w, resting, s) : cases;
    cases = now;
    const last = s === resting.stages.length - 1 && w.options.paper === true;
    return { id, title, step, standing, adding, ...(last ? onPaper(w, resting, now) : now) };
  });
}

type Cases = Pick<StageResult, 'asBuilt' | 'losses'>;

function casesAt(w: SupportWorkings, resting: LossWorking, s: number): Cases {
  const runs = resting.parts.flatMap((part) => {
    const run = part.stages[s];
    return run === undefined ? [] : [{ part, run }];
  });
  const losses = new Map<string, Loss>();
  for (const { run } of runs)
    for (const l of run.losses) if (l.loss !== undefined) losses.set(l.loss.id, l.loss);
  const lost = ({ id }: Loss) =>
    runs.map(({ part, run }) => ({ part, run: run.losses.find((l) => l.loss?.id === id) ?? run.asBuilt }));
  const asBuilt = runs.map(({ part, run }) => ({ part, run: run.asBuilt }));
  return {
    asBuilt: loadCase(w, resting, undefined, asBuilt),
    losses: [...losses.values()].map((loss) => loadCase(w, resting, loss, lost(loss))),
  };
}

/** The sums of the finished system written out: as built, and when a vehicle beneath gives way. */
const onPaper = (w: SupportWorkings, resting: LossWorking, { asBuilt, losses }: Cases): Cases => ({
  asBuilt: { ...asBuilt, ...paperOf(w, resting, undefined) },
  losses: losses.map((one) => {
    const loss = w.plan.contacts.some((c) => c.id === one.id)
      ? resting.losses.find((l) => l.id === one.id)
      : undefined;
    return loss === undefined ? one : { ...one, ...paperOf(w, resting, loss) };
  }),
});

function loadCase(
  w: SupportWorkings,
  resting: LossWorking,
  loss: Loss | undefined,
  runs: readonly { readonly part: ComponentRun; readonly run: CaseRun }[],
): LoadCase {
  const failed = runs.filter(({ run }) => !holds(run));
  const notes = [
    ...resting.unknown.map((v) => message('loss.not-known', { vehicle: name(v.name) })),
    ...failed.flatMap(({ part, run }) => failureNote(w, part, run)),
    ...(runs.some(({ run }) => run.smallSteps) ? [term('loss.slower')] : []),
  ];
  const first = failed[0];
  return {
    id: loss?.id ?? 'as built',
    title: loss?.title ?? term('figure.as-built'),
    lost: loss?.ref,
    rests: failed.length === 0 && resting.unknown.length === 0,
    free: first === undefined ? undefined : freeOf(w, first.part, first.run),
    reactions: runs.flatMap(({ part, run }) => (holds(run) ? reactions(part, run) : [])),
    notes,
  };
}

/** What is not held: `the front of the trailer`. */
export function freeOf(w: SupportWorkings, part: ComponentRun, run: CaseRun): Message | undefined {
  if (run.fall !== undefined) {
    const left = part.component.points.map((p, i) => run.there[i] === true && !isLost(run, p.id));
    const free = freeEnd(run.fall.motions, part.component, run.fall.corner, left, w.vehicles);
    return free === undefined
      ? term('loss.one-end')
      : message('loss.end-of', { end: free.end, body: free.body.name });
  }
  const [first] = part.component.bodies;
  if (run.balance === undefined) return undefined;
  const end = term('loss.one-side');
  return first === undefined ? end : message('loss.end-of', { end, body: first.name });
}

const isLost = (run: CaseRun, point: string): boolean => run.loss?.points.includes(point) === true;

function failureNote(w: SupportWorkings, part: ComponentRun, run: CaseRun): readonly Message[] {
  const bodies = list(part.component.bodies.map((b) => b.name));
  if (run.unsolved) return [message('loss.not-solved', { bodies })];
  const where = cornerWords(part, run.fall?.corner ?? run.balance ?? []);
  const corner = where === undefined ? {} : { corner: message('loss.with', { corner: where }) };
  return run.fall !== undefined
    ? [message('loss.falls', { what: freeOf(w, part, run) ?? term('loss.one-end'), ...corner })]
    : [message('loss.balances', { bodies, ...corner })];
}

function reactions(part: ComponentRun, run: CaseRun): readonly Reaction[] {
  return part.component.points.flatMap((p, i) => {
    if (run.there[i] !== true || isLost(run, p.id)) return [];
    return [
      {
        id: p.id,
        element: p.element,
        label: p.label,
        at: { x: p.at.x, y: p.at.y },
        upper: p.upper,
        lower: p.lower,
        load: { low: at(run.low, i), high: at(run.high, i) },
      },
    ];
  });
}
