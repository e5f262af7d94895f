import { describe, expect, it } from 'vitest';
import { openWorkspace } from '../workspace/open-workspace.js';
import { compareVersions } from './compare-versions.js';
import type { BlockChange, Version } from './comparison.js';

const folder = 'file:///alder-ridge/';

/** Files as one version; each is read and checked. */
function version(files: Readonly<Record<string, string>>): Version {
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: [folder],
    today: '2026-11-01',
    push: true,
  });
  for (const [path, text] of Object.entries(files)) workspace.put(folder + path, text, 1);
  return {
    files: Object.keys(files).map((path) => {
      const bound = workspace.bound(folder + path);
      if (bound === undefined) throw new Error(path);
      return { path, bound, plans: workspace.check(folder + path).plans };
    }),
  };
}

const plan = (crib = '', more = '') => `use "library/vehicles.crib"
use "library/gear.crib"

plan "Trailer by the scale house" {
  ground {
    surface asphalt
    grade 1 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo 20,000 lb from 4 ft to 48 ft height 72 to 96 in
  }
  crib A {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   11
    wedges    4 pairs
    at        21 ft, driver side 3 ft 4 in
    captures  rail
    ${crib}
  }
  crib B {
    timber    Fir4x4 24 in long
    layout    2 by 2
    courses   11
    wedges    4 pairs
    at        21 ft, passenger side 3 ft 4 in
    captures  rail
  }
  steps {
    1  chock  trailer both directions  crew 1  takes 1 min
    2  build  A                        crew 2  takes 5 min
    3  build  B                        crew 2  takes 5 min
  }
  ${more}
}
`;

const compared = (before: string, after: string) =>
  compareVersions(version({ 'a.crib': before }), version({ 'a.crib': after }));

/** One change in a row, for reading. */
const rows = (blocks: readonly BlockChange[], within = ''): readonly string[] =>
  blocks.flatMap((b) => {
    const at = `${within}${b.keyword}${b.name === '' ? '' : ` ${b.name}`}`;
    const names = b.renamedFrom === undefined ? [] : [`${at}: was ${b.renamedFrom}`];
    const moves = b.movedFrom === undefined ? [] : [`${at}: was in ${b.movedFrom}`];
    if (b.kind !== 'changed') return [`${at}: ${b.kind}`];
    const lines = b.lines.map((l) => `${at}: ${l.before ?? 'nothing'} -> ${l.after ?? 'nothing'}`);
    return [...names, ...moves, ...lines, ...rows(b.blocks, `${at} / `)];
  });

const title = 'plan Trailer by the scale house';

describe('compareVersions', () => {
  it('finds nothing where layout, comments, order of blocks and spelling of numbers differ', () => {
    const other = plan()
      .replace('20,000 lb', '20000 lb')
      .replace('courses   11', 'courses 11 // eleven')
      .replace('24 in long', '2 ft long')
      .replace('surface asphalt\n    grade 1 % toward rear', 'grade 1.0 % toward rear; surface asphalt');
    const [head, cribs] = [other.indexOf('  crib A'), other.indexOf('  crib B')];
    const steps = other.indexOf('  steps');
    const turned =
      other.slice(0, head) + other.slice(cribs, steps) + other.slice(head, cribs) + other.slice(steps);
    const found = compared(plan(), turned);
    expect(rows(found.blocks)).toEqual([]);
    expect(found.plans).toEqual([]);
    expect(found.compared).toBe(1);
  });

  it('names a changed line in the words of its author, with the figures and findings that follow', () => {
    const found = compared(plan(), plan().replace('courses   11', 'courses   9'));
    expect(rows(found.blocks)).toEqual([`${title} / crib A: courses 11 -> courses 9`]);
    const [change] = found.plans;
    expect(change?.figures.find((f) => f.before.key === 'height')?.by).toBeCloseTo(9 / 11 - 1, 9);
    expect(change?.findings.some((f) => f.kind === 'new' && f.rule === 'crib-reach')).toBe(true);
    expect(change?.after?.verdict).toBe('unsafe');
    expect(change?.marked).toEqual({ before: ['crib/A'], after: ['crib/A'] });
  });

  it('knows a renamed support again, in the lines that name it too', () => {
    const after = plan().replace('crib A {', 'crib Front {').replace('build  A', 'build  Front');
    const found = compared(plan(), after);
    expect(rows(found.blocks)).toEqual([`${title} / crib Front: was A`]);
    expect(found.plans).toEqual([]);
  });

  it('knows a step again whose number shifted', () => {
    const after = plan()
      .replace('1  chock', '1  size up trailer takes 2 min\n    2  chock')
      .replace('2  build  A', '3  build  A')
      .replace('3  build  B', '4  build  B');
    expect(rows(compared(plan(), after).blocks)).toEqual([
      `${title} / steps: nothing -> 1 size up trailer takes 2 min`,
    ]);
  });

  it('says what was added and taken out', () => {
    const after = plan()
      .replace(/ {2}crib B \{[^}]*\}\n/, '')
      .replace(/ {4}3 .*\n/, '');
    const found = compared(plan(), after);
    expect(rows(found.blocks)).toEqual([
      `${title} / steps: 3 build B crew 2 takes 5 min -> nothing`,
      `${title} / crib B: removed`,
    ]);
    expect(found.plans[0]?.stock.length).toBeGreaterThan(0);
  });

  it('knows a plan again in another file, and one with another title', () => {
    const moved = compareVersions(version({ 'a.crib': plan() }), version({ 'yard/b.crib': plan() }));
    expect(rows(moved.blocks)).toEqual([`${title}: was in a.crib`]);
    const renamed = compared(plan(), plan().replace('by the scale house', 'at gate 3'));
    expect(rows(renamed.blocks)).toEqual(['plan Trailer at gate 3: was Trailer by the scale house']);
    expect(renamed.plans).toEqual([]);
  });

  it('gives every finding of a plan that is new, and of one that is gone', () => {
    const unsafe = plan().replace('courses   11', 'courses   9');
    const added = compareVersions(version({}), version({ 'a.crib': unsafe }));
    expect(rows(added.blocks)).toEqual([`${title}: added`]);
    expect(added.plans[0]?.before).toBeUndefined();
    expect(added.plans[0]?.findings.map((f) => f.kind)).toContain('new');
    const gone = compareVersions(version({ 'a.crib': unsafe }), version({}));
    expect(gone.plans[0]?.after).toBeUndefined();
    expect(new Set(gone.plans[0]?.findings.map((f) => f.kind))).toEqual(new Set(['gone']));
  });

  it('never calls a plan that was not read whole fine', () => {
    const found = compared(plan(), plan('overhang 0,4 in'));
    expect(found.plans[0]?.after?.verdict).not.toBe('no danger found');
  });
});
