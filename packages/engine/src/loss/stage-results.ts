import type { LoadCase, Reaction, StageResult } from '../analysis/analysis.js';
import { at } from '../resting/at.js';
import type { SupportWorkings } from '../workings/support-workings.js';
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

/** The sums of the finished set-up written out: as built, and when a vehicle beneath gives way. */
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
    ...resting.unknown.map(
      (v) => `The weight or the center of ${v.name} is not known, so what carries it is not known.`,
    ),
    ...failed.flatMap(({ part, run }) => failureNote(w, part, run)),
    ...(runs.some(({ run }) => run.smallSteps) ? ['Worked out by the slower method.'] : []),
  ];
  const first = failed[0];
  return {
    id: loss?.id ?? 'as built',
    title: loss?.title ?? 'as built',
    lost: loss?.ref,
    rests: failed.length === 0 && resting.unknown.length === 0,
    free: first === undefined ? undefined : freeOf(w, first.part, first.run),
    reactions: runs.flatMap(({ part, run }) => (holds(run) ? reactions(part, run) : [])),
    notes,
  };
}

/** What is not held: `the front of trailer`. */
export function freeOf(w: SupportWorkings, part: ComponentRun, run: CaseRun): string | undefined {
  if (run.fall !== undefined) {
    const left = part.component.points.map((p, i) => run.there[i] === true && !isLost(run, p.id));
    const free = freeEnd(run.fall.motions, part.component, run.fall.corner, left, w.vehicles);
    return free === undefined ? 'one end' : `${free.end} of ${free.body.name}`;
  }
  if (run.balance !== undefined) return `one side of ${part.component.bodies[0]?.name ?? 'it'}`;
  return undefined;
}

const isLost = (run: CaseRun, point: string): boolean => run.loss?.points.includes(point) === true;

function failureNote(w: SupportWorkings, part: ComponentRun, run: CaseRun): readonly string[] {
  const names = part.component.bodies.map((b) => b.name).join(' and ');
  if (run.unsolved) return [`How ${names} would rest could not be worked out. Treat it as not held.`];
  const corner = run.fall?.corner ?? run.balance ?? [];
  const where = cornerWords(part, corner);
  const when = where === '' ? '' : ` with ${where}`;
  return run.fall !== undefined
    ? [`Nothing holds ${freeOf(w, part, run)}${when}.`]
    : [`${names} only balances${when}: nothing keeps it from going over.`];
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
