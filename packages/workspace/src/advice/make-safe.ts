import { elementMessage } from '@cribwright/engine';
import { formatted } from '@cribwright/language/internal';
import type { Message, Name } from '@cribwright/messages';
import { applyChanges } from '../edits/apply-changes.js';
import { clash } from '../edits/clash.js';
import type { Checked, Pending, Problem, ProblemFix } from '../workspace/checked.js';
import type { Workspace } from '../workspace/workspace.js';
import { type Effect, effectOf } from './effect.js';
import { isNearer } from './is-nearer.js';
import { isUnsafe, problemName } from './unsafe-problem.js';

/** One change on the way to a safe plan. */
export interface SafetyStep {
  /** What it puts right. */
  readonly problem: Problem;
  readonly title: Message;
  /** What it is about: `crib A`. A line of the text is about nothing. */
  readonly on?: Message | Name;
  /** What it does to the figure that the problem is about, where there is one. */
  readonly effect?: Effect;
  /**
   * Counts of what is unsafe, or could not be checked, before and after: without the push as long as anything is unsafe
   * without it.
   */
  readonly unsafe: readonly [before: number, after: number];
}

/** The changes that were found, in order, and what they come to. */
export interface SafetyPlan {
  readonly steps: readonly SafetyStep[];
  /** New texts by the files' addresses. */
  readonly texts: Readonly<Record<string, string>>;
  /** What is still unsafe after all of them, or could not be checked. Empty where nothing is. */
  readonly left: readonly Problem[];
  /** `expect` lines that do not hold: they named faults that are gone, or hold no longer for another reason. */
  readonly expectations: readonly Problem[];
  /** All that is known of the file with these texts: to be drawn. */
  readonly after: Checked | undefined;
}

/** More steps than this are not taken: a plan that needs them is written anew. */
const mostSteps = 40;
/** As many pairs of fixes as are tried where no single one helps. */
const mostPairs = 40;
/** As many steps in a row as may leave the count as it is: a danger may hide another. */
const mostLevel = 4;
/** As many times as the search goes back to another fix that seemed as good. */
const mostReturns = 6;

interface Candidate {
  readonly problem: Problem;
  readonly fix: ProblemFix;
}

/** Where a search stands: what was done, and what that comes to. */
interface Way {
  /** The last fixes of it. */
  readonly taken: readonly Candidate[];
  readonly steps: readonly SafetyStep[];
  readonly texts: ReadonlyMap<string, string>;
  /** With the fixes as they are for these texts. */
  readonly left: readonly Problem[];
  /** Steps in a row that left the count as it was. */
  readonly level: number;
}

/** The workspace while fixes are tried on it. */
interface Bench {
  readonly textOf: (uri: string) => string;
  /** Puts these texts, and the own ones of all other files. */
  readonly put: (texts: ReadonlyMap<string, string>) => void;
  /** What is checked now, the slow push included or not. `undefined` where more than `most` is unsafe without it. */
  readonly check: (to: Pending, most?: number) => Generator<void, Checked | undefined>;
}

/**
 * Looks for fixes that make a file's plans safe. Each is tried on the workspace, and the one after which the least is
 * unsafe is taken. A fix may bring to light what another fault hid, so that the count may stay as it is for a few
 * steps; the answer ends where the least was unsafe. Where no single fix helps, pairs are tried, and then other fixes
 * that seemed as good before. What a plan expects of itself is not counted: it is no danger, and changes with what is
 * mended. A text that is laid out as the formatter lays it out is laid out again.
 *
 * Yields between the steps of each trial, so that a caller may stop it. The workspace has its own texts again at the end.
 * It asks for the push itself: open the workspace without it, or each trial works it out.
 */
export function* makeSafe(workspace: Workspace, uri: string): Generator<void, SafetyPlan> {
  const own = new Map<string, string>();
  let version = 1_000_000;
  const bench: Bench = {
    textOf: (file) => workspace.bound(file)?.text ?? '',
    put: (texts) => {
      for (const file of texts.keys()) if (!own.has(file)) own.set(file, bench.textOf(file));
      for (const [file, before] of own) {
        const text = texts.get(file) ?? before;
        if (text !== bench.textOf(file)) workspace.put(file, text, ++version);
      }
    },
    *check(to, most) {
      yield* workspace.complete(uri, 'loads');
      if (most !== undefined && unsafeOf(workspace.check(uri)).length > most) return undefined;
      if (to === 'push') yield* workspace.complete(uri, 'push');
      return workspace.check(uri);
    },
  };
  const laidOut = (file: string): boolean => {
    const bound = workspace.bound(file);
    return bound !== undefined && formatted(bound) === bound.text;
  };
  try {
    const found = yield* searched(bench);
    bench.put(new Map());
    const tidy = new Set([...found.texts.keys()].filter(laidOut));
    bench.put(found.texts);
    const texts = [...found.texts].map(([file, text]) => {
      const bound = workspace.bound(file);
      return [file, bound !== undefined && tidy.has(file) ? formatted(bound) : text] as const;
    });
    bench.put(new Map(texts));
    const after = yield* bench.check('push');
    return {
      steps: found.steps,
      texts: Object.fromEntries(texts),
      left: after === undefined ? found.left : unsafeOf(after),
      expectations: after?.problems.filter(isExpectation) ?? [],
      after,
    };
  } finally {
    bench.put(new Map());
  }
}

const nowhere: Way = { taken: [], steps: [], texts: new Map(), left: [], level: 0 };

/**
 * First until nothing is unsafe before the push, which is slow, and on from there with it. Where that does not lead out,
 * with the push from the beginning.
 */
function* searched(bench: Bench): Generator<void, Way> {
  const unpushed = yield* search(bench, 'loads', nowhere);
  const pushed = yield* search(bench, 'push', unpushed);
  if (pushed.left.length === 0 || unpushed.steps.length === 0) return pushed;
  const slow = yield* search(bench, 'push', nowhere);
  return slow.left.length < pushed.left.length ? slow : pushed;
}

function* search(bench: Bench, to: Pending, from: Way): Generator<void, Way> {
  bench.put(from.texts);
  const start: Way = { ...from, left: unsafeOf(yield* bench.check(to)), level: 0 };
  let best = start;
  const seen = new Set<string>([stateOf(start.texts)]);
  /** Ways that were not gone, as good as those that were when they were left; the latest last. */
  const others: Way[] = [];
  let returns = 0;
  for (let way: Way | undefined = start; way !== undefined; ) {
    if (way.left.length < best.left.length) best = way;
    if (best.left.length === 0) return best;
    const next: readonly Way[] =
      way.steps.length < mostSteps && way.level <= mostLevel ? yield* onward(bench, to, way, seen) : [];
    const [first, ...rest] = next;
    // As good as the first, and so worth going back to; those that leave more are not.
    others.push(...rest.filter((o) => o.left.length === first?.left.length).reverse());
    if (first === undefined && ++returns > mostReturns) break;
    way = first === undefined ? others.pop() : yield* withMore(bench, to, first, rest);
    if (way !== undefined) seen.add(stateOf(way.texts));
  }
  return best;
}

const stateOf = (texts: ReadonlyMap<string, string>): string => JSON.stringify([...texts].sort());

/** Where single fixes lead, or else pairs: the least unsafe first. */
function* onward(
  bench: Bench,
  to: Pending,
  way: Way,
  seen: ReadonlySet<string>,
): Generator<void, readonly Way[]> {
  const found: Way[] = [];
  const met = new Set(seen);
  const attempt = function* (taken: readonly Candidate[]): Generator<void, void> {
    const texts = textsWith(bench, way, taken);
    if (texts === undefined || met.has(stateOf(texts))) return;
    met.add(stateOf(texts));
    const tried = yield* triedOn(bench, to, way, taken, texts);
    if (tried !== undefined && helps(tried, way.left)) found.push(tried);
  };
  const singles = way.left.flatMap((problem) => problem.fixes.map((fix) => ({ problem, fix })));
  for (const single of singles) {
    yield* attempt([single]);
    yield;
  }
  let pairs = 0;
  for (const [i, one] of found.length > 0 ? [] : singles.entries()) {
    for (const two of singles.slice(i + 1)) {
      if (one.problem === two.problem || ++pairs > mostPairs) continue;
      yield* attempt([one, two]);
      yield;
    }
  }
  return found.sort((a, b) => a.left.length - b.left.length);
}

/** The way on with what else helped from the same place, as far as it helps still: most faults have nothing to do with each other. */
function* withMore(bench: Bench, to: Pending, first: Way, rest: readonly Way[]): Generator<void, Way> {
  let way = first;
  for (const other of rest) {
    const taken = other.taken.flatMap(({ problem, fix }) => {
      const now = way.left.find((p) => problemName(p) === problemName(problem));
      const same = now?.fixes.find((f) => JSON.stringify(f.title) === JSON.stringify(fix.title));
      return now === undefined || same === undefined ? [] : [{ problem: now, fix: same }];
    });
    if (taken.length < other.taken.length) continue;
    const texts = textsWith(bench, way, taken);
    const tried = texts && (yield* triedOn(bench, to, way, taken, texts));
    yield;
    if (tried !== undefined && tried.left.length < way.left.length) way = tried;
  }
  return way;
}

function textsWith(
  bench: Bench,
  way: Way,
  taken: readonly Candidate[],
): ReadonlyMap<string, string> | undefined {
  bench.put(way.texts);
  const changes = changed(taken, bench.textOf);
  return changes && new Map([...way.texts, ...changes]);
}

/** What fixes come to; `undefined` where more is unsafe with them. */
function* triedOn(
  bench: Bench,
  to: Pending,
  way: Way,
  taken: readonly Candidate[],
  texts: ReadonlyMap<string, string>,
): Generator<void, Way | undefined> {
  bench.put(texts);
  const checked = yield* bench.check(to, way.left.length);
  if (checked === undefined) return undefined;
  const left = unsafeOf(checked);
  const steps = taken.map(({ problem, fix }): SafetyStep => {
    const effect = effectOf(problem, checked);
    const plan = checked.plans.find((p) => p.plan.title === problem.plan)?.plan;
    return {
      problem,
      title: fix.title,
      ...(plan && problem.finding ? { on: elementMessage(plan, problem.finding.subject.element) } : {}),
      ...(effect === undefined ? {} : { effect }),
      unsafe: [way.left.length, left.length],
    };
  });
  return {
    taken,
    steps: [...way.steps, ...steps],
    texts,
    left,
    level: left.length < way.left.length ? 0 : way.level + 1,
  };
}

/** Less is unsafe than now; or as much, where what each fix is for is gone or nearer to its limit. */
const helps = ({ taken, left: after }: Way, now: readonly Problem[]): boolean =>
  after.length < now.length ||
  (after.length === now.length &&
    taken.every(
      ({ problem }) => countOf(after, problem) < countOf(now, problem) || isNearer(problem, after),
    ));

/** The texts with all of these fixes; `undefined` where they touch the same place, or change nothing. */
function changed(
  taken: readonly Candidate[],
  textOf: (uri: string) => string,
): ReadonlyMap<string, string> | undefined {
  const edits = new Map<string, ProblemFix['edits'][string]>();
  for (const { fix } of taken) {
    for (const [file, changes] of Object.entries(fix.edits)) {
      const known = edits.get(file) ?? [];
      if (changes.some((a) => known.some((b) => clash(a, b)))) return undefined;
      edits.set(file, [...known, ...changes]);
    }
  }
  const texts = [...edits].map(([file, changes]) => [file, applyChanges(textOf(file), changes)] as const);
  return texts.some(([file, text]) => text !== textOf(file)) ? new Map(texts) : undefined;
}

const isExpectation = ({ code }: Problem): boolean => code === 'expectation-unmet';

/** What a plan expects of itself is no danger. */
const unsafeOf = (checked: Checked | undefined): readonly Problem[] =>
  (checked?.problems ?? []).filter((p) => isUnsafe(p) && !isExpectation(p));

const countOf = (problems: readonly Problem[], one: Problem): number =>
  problems.filter((p) => problemName(p) === problemName(one)).length;
