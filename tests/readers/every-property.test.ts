import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { drawScene, fieldSheet, firstChoice, svgOf, viewsOf } from '@cribwright/drawing';
import type { Analysis } from '@cribwright/engine';
import { schema } from '@cribwright/language';
import { shippedPolicy } from '@cribwright/model';
import {
  type Checked,
  lessonsIn,
  openWorkspace,
  type PlanReply,
  type Workspace,
} from '@cribwright/workspace';

import { expect, it } from 'vitest';
import { keyOf, type Line, linesOf, variantsOf } from './variants.js';

const { href } = new URL('everything.crib', import.meta.url);

interface Shown {
  readonly lines: readonly Line[];
  /** What is wrong with the text itself. */
  readonly wrong: string;
  /** Each thing that a person is shown, cheapest first. Worked out as asked. */
  readonly outputs: Iterable<string>;
}

/** One workspace for all texts: the checks of a plan that a change leaves as it is are not run again. */
const open = (push: boolean): Workspace =>
  openWorkspace({ files: { read: async () => undefined }, folders: [], today: '2026-05-01', push });
let version = 0;

/** Reads the text and gives all that a person is shown of it. */
async function shown(text: string, workspace: Workspace): Promise<Shown> {
  workspace.put(href, text, ++version);
  await workspace.load(href);
  const file = workspace.bound(href);
  if (file === undefined) throw new Error(`${href} cannot be read`);
  const checked = workspace.check(href);
  return {
    lines: linesOf(file),
    wrong: JSON.stringify(checked.problems.filter((p) => p.source === 'text').map((p) => p.code)),
    outputs: outputsOf(checked, () => lessonsIn(file, checked.plans)),
  };
}

function* outputsOf({ plans }: Checked, lessons: () => unknown): Generator<string> {
  yield plans.map((p) => once(p, 'analysis')).join();
  yield JSON.stringify(plans.map(({ analysis }) => analysis.expectations));
  yield JSON.stringify(lessons());
  yield plans.map((p) => once(p, 'sheet')).join();
  for (const p of plans) yield once(p, 'views');
}

/** What a person is shown of one plan. */
const of = {
  analysis: ({ analysis: { expectations: _, ...analysis } }) =>
    JSON.stringify({
      ...analysis,
      findings: analysis.findings.filter((f) => !aside.includes(f.rule)),
      supports: analysis.supports.map(({ worst: __, ...support }) => support),
    }),
  sheet: ({ plan, analysis }) => fieldSheet(plan, analysis),
  views: ({ plan, analysis }) =>
    viewsOf(plan, analysis)
      .map(({ id }) => svgOf(drawScene(plan, analysis, { ...firstChoice, view: id })))
      .join(),
} as const satisfies Readonly<Record<string, (plan: PlanReply) => string>>;

/** That a limit was changed, and what follows from that finding alone, is no reader of the limit. */
const aside: readonly string[] = ['policy-loosened', 'expectation-unmet'];

/** Its digest. The same plan with the same analysis shows the same: it is drawn once. */
function once(reply: PlanReply, output: keyof typeof of): string {
  const known = drawn.get(reply.analysis) ?? new Map<string, string>();
  drawn.set(reply.analysis, known);
  const key = `${output} ${digest(JSON.stringify(reply.plan))}`;
  const before = known.get(key) ?? digest(of[output](reply));
  known.set(key, before);
  return before;
}

const drawn = new WeakMap<Analysis, Map<string, string>>();
const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Outputs of the text as it is, worked out once. */
class Base {
  private readonly known: string[] = [];
  private readonly rest: Iterator<string>;

  constructor(readonly shown: Shown) {
    this.rest = shown.outputs[Symbol.iterator]();
  }

  /** Whether a person is shown something else of another text, in the first `most` of the outputs. */
  differsFrom(other: Shown, most: number): boolean {
    let i = 0;
    for (const output of other.outputs) {
      if (i >= most) return false;
      if (this.known[i] === undefined) this.known.push(this.rest.next().value ?? '');
      if (this.known[i++] !== output) return true;
    }
    return false;
  }
}

/** Every property of the schema by its name here. */
const all = schema.flatMap((block) =>
  [...block.properties, ...(block.numbered ? [block.numbered] : [])].map((property) =>
    keyOf(block, property),
  ),
);

/** Those of the properties that no change of their lines showed to a person. */
async function unread(wanted: readonly string[], push: boolean): Promise<readonly string[]> {
  const left = new Set(wanted);
  const workspace = open(push);
  const text = readFileSync(new URL(href), 'utf8');
  const base = new Base(await shown(text, workspace));
  for (const line of base.shown.lines) {
    if (!left.has(line.key)) continue;
    const most = line.property.key in shippedPolicy.limits ? 1 : Number.POSITIVE_INFINITY;
    for (const variant of variantsOf(text, line)) {
      const other = await shown(variant, workspace);
      if (other.wrong !== base.shown.wrong || !base.differsFrom(other, most)) continue;
      left.delete(line.key);
      break;
    }
  }
  return [...left];
}

/** What only the side push reads, which takes long. */
const bySidePush: readonly string[] = [
  'load: on',
  'load: at',
  'load: force',
  'load: toward',
  'policy: push margin',
  'policy: push height',
  'policy: sudden loss factor',
];

it('shows a person something else when a property of the language is changed', async () => {
  expect(all.length).toBeGreaterThan(150);
  expect(bySidePush.filter((key) => !all.includes(key))).toEqual([]);
  expect(await unread(bySidePush, true)).toEqual([]);
  expect(
    await unread(
      all.filter((key) => !bySidePush.includes(key)),
      false,
    ),
  ).toEqual([]);
});
