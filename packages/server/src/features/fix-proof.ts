import { elementMessage } from '@cribwright/engine';
import type { BoundFile } from '@cribwright/language';
import { type Message, message as messageOf, type Name, name } from '@cribwright/messages';
import {
  applyChanges,
  type Checked,
  type Effect,
  effectOf,
  isNearer,
  isUnsafe,
  type Problem,
  problemName,
} from '@cribwright/workspace/internal';
import type { CancellationToken } from 'vscode-languageserver';
import type { FeatureContext } from '../context/feature-context.js';
import { inSteps } from '../context/in-steps.js';

/** What a fix comes to when the plan is checked again with it. */
export interface FixProof {
  /** What it is to put right is found still. */
  readonly remains: boolean;
  /** What was not unsafe before, and then is: `crib-reach on crib A`. */
  readonly raises: readonly (Message | Name)[];
  /** What it does to the figure that the finding is about. */
  readonly effect: Effect | undefined;
  /** It is found still, and is nearer to its limit. */
  readonly nearer: boolean;
}

/** More fixes than this are not tried out for one question. */
const most = 24;

/**
 * Tries the fixes of findings out on a copy, each by itself, and checks the plan again: when somebody asks for them,
 * never while they type. The push is not tried again: it takes too long for a list that is waited for.
 *
 * Fixes of the text are left out: they let checks run that could not, and what these find was there before.
 */
export async function fixProofs(
  desk: FeatureContext,
  file: BoundFile,
  problems: readonly Problem[],
  before: Checked,
  token?: CancellationToken,
): Promise<ReadonlyMap<Problem['fixes'][number], FixProof>> {
  const proofs = new Map<Problem['fixes'][number], FixProof>();
  const wanted = problems
    .filter((p) => p.finding !== undefined)
    .flatMap((problem) => problem.fixes.map((fix) => ({ problem, fix })))
    .slice(0, most);
  if (wanted.length === 0) return proofs;
  const canceled = (): boolean => token?.isCancellationRequested === true;
  const copy = desk.copyWith(new Map());
  let version = 0;
  const put = (uri: string, text: string): void => copy.put(uri, text, ++version);
  await copy.load(file.uri);
  for (const { problem, fix } of wanted) {
    if (canceled()) break;
    const touched = Object.entries(fix.edits);
    for (const [uri, changes] of touched)
      put(uri, applyChanges(desk.workspace.bound(uri)?.text ?? '', changes));
    await copy.load(file.uri);
    if (!(await inSteps(copy.complete(file.uri, 'loads'), () => desk.pause(), canceled))) return proofs;
    proofs.set(fix, compared(problem, before, copy.check(file.uri)));
    for (const [uri] of touched) put(uri, desk.workspace.bound(uri)?.text ?? '');
  }
  return proofs;
}

function compared(problem: Problem, before: Checked, after: Checked): FixProof {
  const had = counts(before.problems.filter(isUnsafe));
  const has = counts(after.problems.filter(isUnsafe));
  const fresh = after.problems.filter(
    (p) => isUnsafe(p) && (has.get(problemName(p)) ?? 0) > (had.get(problemName(p)) ?? 0),
  );
  const like = ({ problems }: Checked) =>
    problems.filter((p) => problemName(p) === problemName(problem) && p.severity === problem.severity).length;
  return {
    remains: like(after) >= like(before),
    raises: distinct(fresh.map((p) => wordsOf(p, after))),
    effect: effectOf(problem, after),
    nearer: isNearer(problem, after.problems),
  };
}

const distinct = <T>(all: readonly T[]): readonly T[] => [
  ...new Map(all.map((one) => [JSON.stringify(one), one])).values(),
];

/** How often each thing is said. */
function counts(problems: readonly Problem[]): ReadonlyMap<string, number> {
  const said = new Map<string, number>();
  for (const p of problems) said.set(problemName(p), (said.get(problemName(p)) ?? 0) + 1);
  return said;
}

function wordsOf({ code, finding, plan }: Problem, { plans }: Checked): Message | Name {
  const home = plans.find((p) => p.plan.title === plan)?.plan;
  return home === undefined || finding === undefined
    ? name(code)
    : messageOf('editor.rule-on', { rule: name(code), on: elementMessage(home, finding.subject.element) });
}
