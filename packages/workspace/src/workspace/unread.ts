import type { BoundBlock, BoundFile, LanguageProblem, Unread } from '@cribwright/language';
import type { Elaborated } from '@cribwright/language/internal';
import { type ElaboratedFile, planBlocks, problem } from '@cribwright/language/internal';
import { count, name } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { append, type Span } from '@cribwright/syntax/internal';
import { settled, unreadParts } from './consequences.js';
import { fileName } from './files.js';
import { rangeOf } from './lines.js';

/** What must be known of the files that plans read from. */
export interface ReadFrom {
  readonly bound: (uri: string) => BoundFile | undefined;
  /** Files that a file uses itself. */
  readonly targets: (uri: string) => readonly string[];
  /** Files that are read from without a `use`. */
  readonly always: readonly string[];
}

/** An error with the file that it stands in. */
interface Fault {
  readonly file: BoundFile;
  readonly problem: LanguageProblem;
}

/**
 * Marks every plan of a file that was not read whole, and says what could not be read. A plan reads its own block, all
 * of its file outside other plans, and the same of every file that is used, directly or not. An error in any of them
 * may hide a line that the plan needs, so that it makes the plan partial. Where the braces of a file are broken, its
 * plans have no certain end, and every error in it counts.
 *
 * Errors in other files are told where the plan's own file uses them, with the places.
 */
export function withUnread(file: BoundFile, elaborated: ElaboratedFile, from: ReadFrom): ElaboratedFile {
  const blocks = planBlocks(file.blocks);
  if (blocks.length === 0) return elaborated;
  const seen = new Set([file.uri]);
  const byUse = file.uses.map((use) => ({
    use,
    faults: use.target === undefined ? [] : faultsFrom([use.target], seen, from),
  }));
  const used = byUse.flatMap(({ faults }) => faults);
  const always = faultsFrom(from.always, seen, from);
  const home = homeIn(file);
  const ownFaults = faultsOf(file);
  const whole = new Map([undefined, ...blocks].map((plan) => [plan, ownFaults(plan).length === 0]));
  const problems = elaborated.problems.flatMap((p) =>
    used.length === 0 && whole.get(home(p.span)) === true ? [p] : settled(p),
  );
  // What follows from an error comes after the errors themselves.
  const followFaults = faultsOf({ ...file, problems });
  const plans = elaborated.plans.map((made) => {
    const told = [...ownFaults(made.block), ...used, ...followFaults(made.block)];
    return marked(made, told, always);
  });
  const told = byUse.flatMap(({ use, faults }) =>
    faults.length === 0 ? [] : [useNotWhole(use.path, use.pathSpan, faults)],
  );
  const silent = plans.flatMap(({ made, untold }) => (untold ? [planNotWhole(made.block)] : []));
  return {
    ...elaborated,
    plans: plans.map(({ made }) => made),
    problems: [...problems, ...told, ...silent],
  };
}

/** Errors of these files and of all that they use, files seen before left out. */
function faultsFrom(uris: readonly string[], seen: Set<string>, from: ReadFrom): readonly Fault[] {
  const faults: Fault[] = [];
  const queue = [...uris];
  for (let uri = queue.shift(); uri !== undefined; uri = queue.shift()) {
    if (seen.has(uri)) continue;
    seen.add(uri);
    const file = from.bound(uri);
    if (file) append(faults, faultsIn(file, undefined));
    append(queue, from.targets(uri));
  }
  return faults;
}

/** Errors of one file that concern a plan: `own` is its block, where it stands in this file. */
const faultsIn = (file: BoundFile, own: BoundBlock | undefined): readonly Fault[] => faultsOf(file)(own);

/** Gives for each plan of a file the errors that concern it. */
function faultsOf(file: BoundFile): (own: BoundBlock | undefined) => readonly Fault[] {
  const errors = file.problems.filter((p) => p.severity === 'error').map((problem) => ({ file, problem }));
  // A block that stands in the wrong place may have been put where other files see it.
  const mixed = file.brokenLayout || file.problems.some((p) => p.code === 'wrong-place');
  if (mixed || errors.length === 0) return () => errors;
  const home = homeIn(file);
  const placed = errors.map((fault) => ({ fault, plan: home(fault.problem.span) }));
  return (own) => placed.flatMap(({ fault, plan }) => (plan === undefined || plan === own ? [fault] : []));
}

/** Finds the plan of a file in which something stands. */
function homeIn({ blocks }: Pick<BoundFile, 'blocks'>): (span: Span) => BoundBlock | undefined {
  const plans = [...planBlocks(blocks)].sort((a, b) => a.span.start - b.span.start);
  return (span) => {
    let [low, high] = [0, plans.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((plans[middle]?.span.start ?? 0) <= span.start) low = middle + 1;
      else high = middle;
    }
    const plan = plans[low - 1];
    return plan && holds(plan.span, span) ? plan : undefined;
  };
}

const holds = (outer: Span, inner: Span): boolean => outer.start <= inner.start && inner.end <= outer.end;

/** `told` are the faults that the plan's own file shows already. */
function marked(made: Elaborated, told: readonly Fault[], others: readonly Fault[]) {
  if (!made.partial && told.length + others.length === 0) return { made, untold: false };
  const untold = told.length === 0;
  const places = [...told, ...others].map(unreadOf);
  const unread = places.length > 0 ? places : [unreadAt(made, planNotWhole(made.block))];
  const parts = [...told, ...others].flatMap(({ file, problem: p }) =>
    file.uri === made.block.uri && holds(made.block.span, p.span)
      ? unreadParts(made, p)
      : (['vehicle'] as const),
  );
  const plan: Plan = {
    ...made.plan,
    partial: true,
    unread: places.length > 0 ? [...new Set(parts)] : ['vehicle'],
  };
  return { made: { ...made, partial: true, unread, plan }, untold };
}

const unreadOf = ({ file, problem: { message, span } }: Fault): Unread => ({
  uri: file.uri,
  file: fileName(file.uri),
  range: rangeOf(file.text, span),
  message,
});

const unreadAt = ({ block, text }: Elaborated, { message, span }: LanguageProblem): Unread => ({
  uri: block.uri,
  file: fileName(block.uri),
  range: rangeOf(text, span),
  message,
});

/** As many places as are linked from one `use`. */
const mostPlaces = 20;

function useNotWhole(path: string, span: Span, faults: readonly Fault[]): LanguageProblem {
  const places = faults.slice(0, mostPlaces);
  const [first] = places.map(unreadOf);
  return problem(
    'use-not-whole',
    span,
    {
      path: name(path),
      count: count(faults.length),
      file: name(first?.file ?? path),
      line: name(String((first?.range.start.line ?? 0) + 1)),
    },
    { related: places.map(({ file, problem: p }) => ({ uri: file.uri, span: p.span, message: p.message })) },
  );
}

/** Where what is missing was told nowhere. */
const planNotWhole = (block: BoundBlock): LanguageProblem => problem('plan-not-whole', block.headSpan, {});
