import { readFileSync } from 'node:fs';
import { drawScene, fieldSheet, firstChoice, svgOf, viewsOf } from '@cribwright/drawing';
import { schema } from '@cribwright/language';
import { shippedPolicy } from '@cribwright/model';
import { type Checked, lessonsIn, openWorkspace } from '@cribwright/workspace';
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

// One workspace for all: the checks of a plan that a change leaves as it is are not run again.
const workspace = openWorkspace({
  files: { read: async () => undefined },
  folders: [],
  today: '2026-05-01',
  push: false,
});
let version = 0;

/** Reads the text and gives all that a person is shown of it. */
async function shown(text: string): Promise<Shown> {
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
  // That a limit was changed, and what follows from that finding alone, is no reader of the limit.
  const aside = ['policy-loosened', 'expectation-unmet'];
  yield JSON.stringify(
    plans.map(({ analysis: { expectations: _, ...analysis } }) => ({
      ...analysis,
      findings: analysis.findings.filter((f) => !aside.includes(f.rule)),
      supports: analysis.supports.map(({ worst: _, ...support }) => support),
    })),
  );
  yield JSON.stringify(plans.map(({ analysis }) => analysis.expectations));
  yield JSON.stringify(lessons());
  yield plans.map(({ plan, analysis }) => fieldSheet(plan, analysis)).join();
  for (const { plan, analysis } of plans)
    for (const { id } of viewsOf(plan, analysis))
      yield svgOf(drawScene(plan, analysis, { ...firstChoice, view: id }));
}

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
async function unread(wanted: readonly string[]): Promise<readonly string[]> {
  const open = new Set(wanted);
  const text = readFileSync(new URL(href), 'utf8');
  const base = new Base(await shown(text));
  for (const line of base.shown.lines) {
    if (!open.has(line.key)) continue;
    const most = line.property.key in shippedPolicy.limits ? 1 : Number.POSITIVE_INFINITY;
    for (const variant of variantsOf(text, line)) {
      const other = await shown(variant);
      if (other.wrong !== base.shown.wrong || !base.differsFrom(other, most)) continue;
      open.delete(line.key);
      break;
    }
  }
  return [...open];
}

/**
 * The plans here do not depend on them, as on what only a push reads, or nothing reads them yet, as the source of a part.
 * A new property may not be put here: make the list shorter, never longer.
 */
const notShownYet: readonly string[] = [
  'plan: units',
  'plan: crew',
  'plan: lift intended',
  'load: on',
  'load: at',
  'load: force',
  'load: toward',
  'vehicle type: no',
  'vehicle type: weight',
  'vehicle: no',
  'vehicle: heading',
  'vehicle: rests on',
  'vehicle: coupled to',
  'rails: may not bear',
  'rails: moves',
  'rails: carries',
  'rails: source',
  'joists: may not bear',
  'joists: moves',
  'joists: carries',
  'joists: source',
  'area: may not bear',
  'area: moves',
  'area: carries',
  'area: source',
  'points: may not bear',
  'points: moves',
  'points: source',
  'crib: base',
  'crib: top',
  'pad: material',
  'step chock: captures',
  'step chock: stands on',
  'strut: preload',
  'strap: to',
  'chain: to',
  'wire rope: from',
  'wire rope: to',
  'species: modulus perpendicular',
  'species: modulus parallel',
  'species: density',
  'species: source',
  'cargo type: source',
  'strut type: post',
  'policy: crossing basis',
  'policy: height ratio some contacts',
  'policy: most overhang',
  'policy: most shims',
  'policy: most packing',
  'policy: steepest capture',
  'policy: most strut angle',
  'policy: push margin',
  'policy: push height',
  'policy: use limit',
  'policy: friction timber on timber',
  'policy: friction timber on metal',
  'policy: dressed size of 8x8',
  'policy: axle limit single',
  'policy: axle limit tandem',
  'policy: gross limit',
  'policy: post slenderness',
  'policy: stiffness spread',
  'policy: ground under cribs',
  'cache: staffing',
  'exercise: plan',
];

it('shows a person something else when a property of the language is changed', async () => {
  expect(all.length).toBeGreaterThan(150);
  expect(notShownYet.filter((key) => !all.includes(key))).toEqual([]);
  expect(await unread(all.filter((key) => !notShownYet.includes(key)))).toEqual([]);
});
