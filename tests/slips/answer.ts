import { wordsIn } from '@cribwright/messages';
import { type Checked, openWorkspace, type Problem, positionOf, type Workspace } from '@cribwright/workspace';
import { basePlan, cacheFile } from './base-plan.js';
import { asRight, type Slip } from './slip.js';

const folder = 'file:///alder-ridge';
const plan = `${folder}/plan.crib`;

/** A workspace with the plan and the cache that it uses. */
export async function openFolder(): Promise<Workspace> {
  const files = new Map([
    [`${folder}/caches/rescue-12.crib`, cacheFile],
    [plan, basePlan],
  ]);
  const workspace = openWorkspace({
    files: { read: async (uri) => files.get(uri), list: async () => [...files.keys()] },
    folders: [folder],
    today: '2026-11-25',
  });
  await workspace.load(`${folder}/caches/rescue-12.crib`);
  await workspace.load(plan);
  // The folder is listed once some path leads nowhere, so that what was meant can be said.
  workspace.put(plan, 'use "nowhere.crib"', 1);
  await workspace.load(plan);
  workspace.put(plan, basePlan, 1);
  await workspace.load(plan);
  return workspace;
}

/** The plan with a slip in it, and where the slip is. */
export interface Slipped {
  readonly text: string;
  /** From, and past the end. `undefined` where something is missing that has no place. */
  readonly mark: { readonly start: number; readonly end: number } | undefined;
}

export function slipped({ title, right, written }: Pick<Slip, 'title' | 'right' | 'written'>): Slipped {
  const at = basePlan.indexOf(right);
  if (at < 0) throw new Error(`${title}: the plan has no “${right}”`);
  const marked = basePlan.slice(0, at) + written + basePlan.slice(at + right.length);
  const start = marked.indexOf('‹');
  const end = marked.indexOf('›') - 1;
  return { text: marked.replace(/[‹›]/g, ''), mark: start < 0 ? undefined : { start, end } };
}

/** What the text should be once the fix is applied. */
export const wantedAfterFix = ({ right, fixed }: Slip): string | undefined =>
  fixed === undefined || fixed === asRight ? fixed && basePlan : basePlan.replace(right, () => fixed);

export interface Answer {
  readonly checked: Checked;
  /** Errors in the text. */
  readonly errors: readonly Problem[];
  /** Findings of the checks, but for the one that says that the plan was not read whole. */
  readonly findings: readonly Problem[];
}

let version = 1;

/** What is said of a text in the place of the plan. */
export function answer(workspace: Workspace, text: string): Answer {
  workspace.put(plan, text, ++version);
  const checked = workspace.check(plan);
  return {
    checked,
    errors: checked.problems.filter((p) => p.source === 'text' && p.severity === 'danger'),
    findings: checked.problems.filter((p) => p.source === 'plan' && p.code !== 'expectation-unmet'),
  };
}

/** The text after the first fix of a problem. */
export function afterFix(text: string, problem: Problem): string | undefined {
  const edits = problem.fixes[0]?.edits[plan];
  if (!edits) return undefined;
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((sum, e) => sum.slice(0, e.span.start) + e.text + sum.slice(e.span.end), text);
}

export const inWords = (p: Pick<Problem, 'message'>, locale: 'en' | 'es' = 'en'): string =>
  wordsIn(locale, 'us').message(p.message);

const place = (text: string, offset: number): string => {
  const { line, character } = positionOf(text, offset);
  return `${line + 1}:${character + 1}`;
};

/** What is answered badly of a slip; nothing where every wish is met. */
export function faultsOf(workspace: Workspace, slip: Slip): readonly string[] {
  const faults: string[] = [];
  const { text, mark } = slipped(slip);
  const { checked, errors, findings } = answer(workspace, text);
  const [first, ...more] = errors;
  const shown = (p: Problem) => `${place(text, p.span.start)} ${p.code}: ${inWords(p)}`;
  for (const p of more) faults.push(`one error more: ${shown(p)}`);
  if (!first) return ['no error', ...faults];
  if (mark && !(mark.start <= first.span.start && first.span.start <= mark.end))
    faults.push(
      `error at ${place(text, first.span.start)}, not at ${place(text, mark.start)}: ${shown(first)}`,
    );
  if (!inWords(first).includes(slip.says)) faults.push(`no “${slip.says}” in: ${shown(first)}`);
  const wanted = wantedAfterFix(slip);
  const fixed = afterFix(text, first);
  if (fixed !== wanted && wanted !== undefined)
    faults.push(
      fixed === undefined ? `no fix: ${shown(first)}` : `the fix makes: ${difference(text, fixed)}`,
    );
  for (const p of findings) faults.push(`invented: ${shown(p)}`);
  if (checked.state !== 'errors') faults.push(`state: ${checked.state}`);
  for (const { partial, analysis } of checked.plans) {
    if (!partial) faults.push('looks whole');
    if (analysis.expectations.some((e) => e.held)) faults.push('an expectation holds');
  }
  // Last, because the workspace then holds another text.
  if (wanted !== undefined && fixed === wanted) {
    for (const p of answer(workspace, fixed).errors) faults.push(`after the fix: ${inWords(p)}`);
  }
  return faults;
}

/** The lines that differ, as they then read. */
export function difference(before: string, after: string): string {
  const [a, b] = [before.split('\n'), after.split('\n')];
  let head = 0;
  while (head < a.length && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
  return (
    b
      .slice(head, b.length - tail)
      .map((l) => l.trim())
      .join(' ⏎ ') || '(lines removed)'
  );
}
