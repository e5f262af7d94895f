import { heldPush, type Push, type PushSystem, program as pushProgram } from '@cribwright/engine';
import type { Check, Subject } from './check.js';
import { glpk, highs, type LinearProgram, type Solver } from './linear-program.js';
import { at, standing, toward } from './push-system.js';
import { type Random, randomNumbers } from './random.js';
import { type AnyReference, closedForm, program } from './sources.js';

/** One or two bodies on three to eight contacts, up to four struts, some of them tied, a grade and a tool load. */
function anySystem(r: Random): PushSystem {
  const two = r.next() < 0.4;
  const bodies = [
    {
      id: 'body',
      weight: 10 ** r.between(2, 6),
      center: at(r.between(2, 8), r.between(-0.5, 0.5), r.between(1, 2)),
    },
    ...(two ? [{ id: 'under', weight: 10 ** r.between(2, 5), center: at(r.between(3, 7), 0, 0.5) }] : []),
  ];
  const contact = (upper: string, lower: string, i: number, z: number) => ({
    id: `${upper} ${lower} ${i}`,
    upper,
    lower,
    at: at(r.between(0, 10), r.between(-1.3, 1.3), z),
    friction: r.between(0.05, 1),
    ...(r.next() < 0.3 ? { capacity: 10 ** r.between(3, 6) } : {}),
  });
  const contacts = [
    ...Array.from({ length: r.whole(3, 8) }, (_, i) => contact('body', 'ground', i, 0)),
    ...(two
      ? [
          ...Array.from({ length: r.whole(1, 3) }, (_, i) => contact('body', 'under', i, 1)),
          ...Array.from({ length: 4 }, (_, i) => contact('under', 'ground', i, 0)),
        ]
      : []),
  ];
  const struts = Array.from({ length: r.whole(0, 4) }, (_, i) => {
    const side = r.next() < 0.5 ? -1 : 1;
    const x = r.between(0, 10);
    return {
      id: `S${i}`,
      body: 'body',
      head: at(x, side * 1.2, r.between(0.8, 2)),
      foot: at(x, side * r.between(1.5, 4), 0),
      footFriction: r.between(0.2, 1.2),
      capacity: 10 ** r.between(3, 5),
    };
  });
  const ties = struts
    .filter(() => r.next() < 0.5)
    .map((s) => ({
      id: `T${s.id}`,
      from: { kind: 'foot' as const, strut: s.id },
      to: { kind: 'ground' as const, at: at(s.foot.x, 0, 0) },
      rating: 10 ** r.between(3, 5),
    }));
  const steep = r.between(0, 0.1);
  return standing({
    bodies,
    contacts,
    struts,
    ties,
    gravity: at(Math.sin(steep), 0, -Math.cos(steep)),
    loads:
      r.next() < 0.3
        ? [{ body: 'body', at: at(5, 0, 1), force: at(r.between(-500, 500), 0, r.between(-500, 500)) }]
        : [],
  });
}

const anyPush = (r: Random): Push => ({
  body: 'body',
  at: at(r.between(0, 10), 0, r.between(0, 3)),
  direction: toward(15 * r.whole(0, 23)),
});

/** The very program that the engine solves, for another solver. */
function dense(system: PushSystem, push: Push): LinearProgram {
  const { lp } = pushProgram(system, push);
  const columns = Array.from({ length: lp.count }, (_, j) => j);
  const rows = Array.from(lp.right, (right, i) => ({
    of: columns.map(() => 0),
    is: i < lp.equalities ? ('=' as const) : ('<=' as const),
    right,
  }));
  for (const j of columns)
    for (let e = lp.starts[j] ?? 0; e < (lp.starts[j + 1] ?? 0); e++) {
      const target = rows[lp.rows[e] ?? -1];
      if (target !== undefined) target.of[j] = (target.of[j] ?? Number.NaN) + (lp.values[e] ?? Number.NaN);
    }
  return { objective: columns.map((j) => (j === lp.objective ? 1 : 0)), rows };
}

/** Over a thousand cases, the largest of what `compare` makes of ours and theirs. */
const thousand =
  (load: () => Promise<Solver>, compare: (ours: number | undefined, theirs: number | undefined) => number) =>
  async () => {
    const solve = await load();
    const r = randomNumbers(2718);
    let all = 0;
    for (let i = 0; i < 1000; i++) {
      const system = anySystem(r);
      const push = anyPush(r);
      const found = heldPush(system, push);
      const ours = found.kind === 'holds' ? found.share : undefined;
      all = Math.max(all, compare(ours, solve(dense(system, push))));
    }
    return all;
  };

const bothOrNone = (a: number | undefined, b: number | undefined) =>
  (a === undefined) === (b === undefined) ? 0 : 1;
const apart = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined ? 0 : Math.abs(a - b) / Math.max(1, b);

const count = (kind: 'holds' | 'unsolved') => () => {
  const r = randomNumbers(2718);
  let n = 0;
  for (let i = 0; i < 1000; i++) if (heldPush(anySystem(r), anyPush(r)).kind === kind) n++;
  return n;
};

const row = (what: string, within: number, computed: Check['computed'], source: AnyReference): Check => ({
  what,
  source,
  expected: 0,
  within,
  unit: 'W',
  computed,
});

const HIGHS = program('HiGHS 1.15.3, the same linear program, 1,000 random systems');
const GLPK = program('GLPK (glpk.js 5.0.0), the same linear program, 1,000 random systems');

export const subject: Subject = {
  subject: 'Standing up to a push: random cases, and other solvers beside ours',
  checks: [
    row('largest push, largest difference', 1e-7, thousand(highs, apart), HIGHS),
    row('cannot stand: one says so and the other does not', 0, thousand(highs, bothOrNone), HIGHS),
    row('largest push, largest difference', 1e-7, thousand(glpk, apart), GLPK),
    row('cannot stand: one says so and the other does not', 0, thousand(glpk, bothOrNone), GLPK),
    row(
      'pushes left unsolved, of 1,000',
      0,
      count('unsolved'),
      closedForm('every program is solved, or proved to have no solution'),
    ),
    {
      what: 'systems that hold some push, of 1,000: most',
      source: closedForm('so that the checks above have something to check'),
      expected: 700,
      within: 300,
      unit: '',
      computed: count('holds'),
    },
  ],
};
