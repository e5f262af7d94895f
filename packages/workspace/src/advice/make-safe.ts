import type { Message } from '@cribwright/messages';
import { applyChanges } from '../edits/apply-changes.js';
import { clash } from '../edits/clash.js';
import type { Checked, Problem, ProblemFix } from '../workspace/checked.js';
import type { Workspace } from '../workspace/workspace.js';
import { isUnsafe, problemName } from './unsafe-problem.js';

/** One change on the way to a safe plan. */
export interface SafetyStep {
  /** What it puts right. */
  readonly problem: Problem;
  readonly title: Message;
  /** Counts of what is unsafe, or could not be checked, before and after. */
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
}

/** More steps than this are not taken: a plan that needs them is written anew. */
const mostSteps = 40;
/** As many pairs of fixes as are tried where no single one helps. */
const mostPairs = 40;
/** As many steps in a row as may leave the count as it is: a danger may hide another. */
const mostLevel = 4;

interface Candidate {
  readonly problem: Problem;
  readonly fix: ProblemFix;
}

interface Tried {
  readonly taken: readonly Candidate[];
  readonly texts: ReadonlyMap<string, string>;
  readonly after: readonly Problem[];
}

/** The workspace while fixes are tried on it. */
interface Bench {
  readonly textOf: (uri: string) => string;
  readonly put: (texts: ReadonlyMap<string, string>) => void;
  /** What is unsafe now, the push included. */
  readonly check: () => readonly Problem[];
  readonly expectations: () => readonly Problem[];
}

/**
 * Looks for fixes that make a file's plans safe. Each is tried on the workspace, and the one after which the least is
 * unsafe is taken. A fix may bring to light what another fault hid, so that the count may stay as it is for a few
 * steps; the answer ends where the least was unsafe. Where no single fix helps, pairs are tried. What a plan expects of
 * itself is not counted: it is no danger, and changes with what is mended.
 *
 * Yields between trials, so that a caller may stop it. The workspace has its own texts again at the end.
 */
export function* makeSafe(workspace: Workspace, uri: string): Generator<void, SafetyPlan> {
  const own = new Map<string, string>();
  let version = 1_000_000;
  const bench: Bench = {
    textOf: (file) => workspace.bound(file)?.text ?? '',
    put: (texts) => {
      for (const [file, text] of texts) {
        if (!own.has(file)) own.set(file, bench.textOf(file));
        workspace.put(file, text, ++version);
      }
    },
    check: () => {
      for (const _step of workspace.complete(uri, 'push'));
      return unsafeOf(workspace.check(uri));
    },
    expectations: () => workspace.check(uri).problems.filter(isExpectation),
  };
  try {
    return yield* search(bench);
  } finally {
    for (const [file, text] of own) workspace.put(file, text, ++version);
  }
}

function* search(bench: Bench): Generator<void, SafetyPlan> {
  const texts = new Map<string, string>();
  const steps: SafetyStep[] = [];
  let left = bench.check();
  let best: SafetyPlan = { steps: [], texts: {}, left, expectations: bench.expectations() };
  const seen = new Set<string>([stateOf(texts)]);
  for (let level = 0; left.length > 0 && steps.length < mostSteps && level <= mostLevel; ) {
    const found = yield* better(bench, left, (changed) => seen.has(stateOf(new Map([...texts, ...changed]))));
    if (found === undefined) break;
    bench.put(found.texts);
    for (const [file, text] of found.texts) texts.set(file, text);
    seen.add(stateOf(texts));
    const before = left.length;
    left = bench.check();
    for (const { problem, fix } of found.taken)
      steps.push({ problem, title: fix.title, unsafe: [before, left.length] });
    level = left.length < best.left.length ? 0 : level + 1;
    if (left.length < best.left.length)
      best = {
        steps: [...steps],
        texts: Object.fromEntries(texts),
        left,
        expectations: bench.expectations(),
      };
    yield;
  }
  return best;
}

const stateOf = (texts: ReadonlyMap<string, string>): string => JSON.stringify([...texts].sort());

/**
 * The single fix, or else the pair of fixes, after which the least is unsafe: less than now, or as much where what the
 * fix is for is gone.
 *
 * @param known whether it was tried before where these texts lead to
 */
function* better(
  bench: Bench,
  now: readonly Problem[],
  known: (texts: ReadonlyMap<string, string>) => boolean,
): Generator<void, Tried | undefined> {
  const singles = now.flatMap((problem) => problem.fixes.map((fix) => ({ problem, fix })));
  let best: Tried | undefined;
  const attempt = (taken: readonly Candidate[]): void => {
    const texts = changed(taken, bench.textOf);
    if (texts === undefined || known(texts)) return;
    const before = new Map([...texts.keys()].map((file) => [file, bench.textOf(file)]));
    bench.put(texts);
    const after = bench.check();
    bench.put(before);
    const mended = taken.every(({ problem }) => countOf(after, problem) < countOf(now, problem));
    if (after.length > now.length || (after.length === now.length && !mended)) return;
    if (best === undefined || after.length < best.after.length) best = { taken, texts, after };
  };
  for (const single of singles) {
    attempt([single]);
    yield;
  }
  if (best !== undefined) return best;
  let pairs = 0;
  for (const [i, one] of singles.entries()) {
    for (const two of singles.slice(i + 1)) {
      if (one.problem === two.problem || ++pairs > mostPairs) continue;
      attempt([one, two]);
      yield;
    }
  }
  return best;
}

/** The texts with both fixes; `undefined` where they touch the same place, or change nothing. */
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
const unsafeOf = ({ problems }: Checked): readonly Problem[] =>
  problems.filter((p) => isUnsafe(p) && !isExpectation(p));

const countOf = (problems: readonly Problem[], one: Problem): number =>
  problems.filter((p) => problemName(p) === problemName(one)).length;
