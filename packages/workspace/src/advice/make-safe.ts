import type { Message } from '@cribwright/messages';
import { applyChanges } from '../edits/apply-changes.js';
import type { Checked, Problem, ProblemFix } from '../workspace/checked.js';
import type { Workspace } from '../workspace/workspace.js';

/** One change on the way to a safe plan. */
export interface SafetyStep {
  /** What it puts right. */
  readonly problem: Problem;
  readonly title: Message;
  /** How much is unsafe, or could not be checked, before and after. */
  readonly unsafe: readonly [before: number, after: number];
}

/** The changes that were found, in order, and what they come to. */
export interface SafetyPlan {
  readonly steps: readonly SafetyStep[];
  /** New texts by the files' addresses. */
  readonly texts: Readonly<Record<string, string>>;
  /** What is still unsafe after all of them, or could not be checked. Empty where nothing is. */
  readonly left: readonly Problem[];
}

/** More steps than this are not taken: a plan that needs them is written anew. */
const mostSteps = 40;
/** As many pairs of fixes as are tried where no single one helps. */
const mostPairs = 80;

interface Candidate {
  readonly problem: Problem;
  readonly fix: ProblemFix;
}

interface Tried {
  readonly taken: readonly Candidate[];
  readonly texts: ReadonlyMap<string, string>;
  readonly after: readonly Problem[];
}

/**
 * Looks for fixes that make a file's plans safe. Each is tried on the workspace and checked in full, the push too; one
 * is taken where less is unsafe after it and nothing is that was not before. Where no single fix helps, pairs are
 * tried. Yields between trials, so that a caller may stop it. The workspace has its own texts again at the end.
 */
export function* makeSafe(workspace: Workspace, uri: string): Generator<void, SafetyPlan> {
  const own = new Map<string, string>();
  const texts = new Map<string, string>();
  let version = 1_000_000;
  const textOf = (file: string): string => workspace.bound(file)?.text ?? '';
  const put = (all: ReadonlyMap<string, string>): void => {
    for (const [file, text] of all) {
      if (!own.has(file)) own.set(file, textOf(file));
      workspace.put(file, text, ++version);
    }
  };
  const check = (): readonly Problem[] => {
    for (const _step of workspace.complete(uri, 'push'));
    return unsafeOf(workspace.check(uri));
  };
  const steps: SafetyStep[] = [];
  let left = check();
  try {
    while (left.length > 0 && steps.length < mostSteps) {
      const found = yield* better(left, textOf, put, check);
      if (found === undefined) break;
      put(found.texts);
      for (const [file, text] of found.texts) texts.set(file, text);
      const [before, after] = [left.length, found.after.length];
      for (const { problem, fix } of found.taken)
        steps.push({ problem, title: fix.title, unsafe: [before, after] });
      left = check();
    }
  } finally {
    for (const [file, text] of own) workspace.put(file, text, ++version);
  }
  return { steps, texts: Object.fromEntries(texts), left };
}

/** The best single fix, or pair of fixes, after which less is unsafe and nothing new is. */
function* better(
  left: readonly Problem[],
  textOf: (uri: string) => string,
  put: (texts: ReadonlyMap<string, string>) => void,
  check: () => readonly Problem[],
): Generator<void, Tried | undefined> {
  const singles = left.flatMap((problem) => problem.fixes.map((fix) => ({ problem, fix })));
  let best: Tried | undefined;
  const attempt = (taken: readonly Candidate[]): void => {
    const texts = changed(taken, textOf);
    if (texts === undefined) return;
    const before = new Map([...texts.keys()].map((file) => [file, textOf(file)]));
    put(texts);
    const after = check();
    put(before);
    if (after.length >= left.length || raises(left, after)) return;
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
      const clash = changes.some((a) =>
        known.some(
          (b) => (a.span.start < b.span.end && b.span.start < a.span.end) || a.span.start === b.span.start,
        ),
      );
      if (clash) return undefined;
      edits.set(file, [...known, ...changes]);
    }
  }
  const texts = [...edits].map(([file, changes]) => [file, applyChanges(textOf(file), changes)] as const);
  return texts.some(([file, text]) => text !== textOf(file)) ? new Map(texts) : undefined;
}

/** A danger that nobody accepted, a check that could not run, a text that cannot be read. */
const isUnsafe = ({ severity, finding }: Problem): boolean =>
  finding?.couldNotRun === true || (severity === 'danger' && finding?.accepted === undefined);

const unsafeOf = ({ problems }: Checked): readonly Problem[] => problems.filter(isUnsafe);

/**
 * Whether something is unsafe after that was not before. An error of the text hides what its line would bring: what
 * comes to light once it is mended was there before.
 */
function raises(before: readonly Problem[], after: readonly Problem[]): boolean {
  if (before.some((p) => p.source === 'text')) return false;
  const had = before.map(nameOf);
  return after.some((p) => {
    const at = had.indexOf(nameOf(p));
    if (at >= 0) had.splice(at, 1);
    return at < 0;
  });
}

/** The same thing said of the same element of the same plan, wherever its line now stands. */
const nameOf = ({ code, finding, plan, message }: Problem): string =>
  JSON.stringify([code, plan, finding?.subject.element ?? message]);
