import { type Rest, type RestingSystem, rest, shareBounds } from '@cribwright/engine';
import quadprog from 'quadprog';
import type { Check, Subject } from './check.js';
import { glpk, highs, type LinearProgram, type Solver } from './linear-program.js';
import { type Random, randomNumbers } from './random.js';
import { force, onGround } from './resting-system.js';
import { type AnyReference, closedForm, program } from './sources.js';

/** Systems of one to three bodies on up to fifty contacts, stiffness from 1 to 10⁶; most can rest. */
function anySystem(r: Random): RestingSystem {
  const bodies = Array.from({ length: r.whole(1, 3) }, (_, i) => ({
    id: `b${i}`,
    weight: 10 ** r.between(0, 6),
    x: r.between(-4, 4),
    y: r.between(-1, 1),
  }));
  const springs = bodies.flatMap((body, b) =>
    Array.from({ length: r.whole(3, 16) }, (_, i) => ({
      id: `${body.id} ${i}`,
      upper: body.id,
      lower: b > 0 && r.next() < 0.4 ? `b${b - 1}` : 'ground',
      x: r.between(-6, 6),
      y: r.between(-1.5, 1.5),
      stiffness: 10 ** r.between(0, 6),
    })),
  );
  return { bodies, springs };
}

/** Worst of force and moments left over, as a share of the weight of all bodies (and of 10 m). */
function unbalance(system: RestingSystem, result: Rest): number {
  if (result.kind !== 'rests') return 0;
  const all = system.bodies.reduce((s, b) => s + b.weight, 0);
  return Math.max(
    ...system.bodies.map((body) => {
      let [f, mx, my] = [-body.weight, -body.weight * body.x, -body.weight * body.y];
      for (const [i, s] of system.springs.entries()) {
        const sign = s.upper === body.id ? 1 : s.lower === body.id ? -1 : 0;
        const n = sign * (result.forces[i] ?? Number.NaN);
        f += n;
        mx += n * s.x;
        my += n * s.y;
      }
      return Math.max(Math.abs(f), Math.abs(mx) / 10, Math.abs(my) / 10) / all;
    }),
  );
}

/** What a thousand systems come to, joined by the worst or by the sum. */
const thousandSystems =
  (join: 'worst' | 'sum', value: (result: Rest, system: RestingSystem) => number) => () => {
    const r = randomNumbers(20_090_611);
    let all = 0;
    for (let i = 0; i < 1000; i++) {
      const system = anySystem(r);
      const one = value(rest(system), system);
      all = join === 'sum' ? all + one : Math.max(all, one);
    }
    return all;
  };

const rests = (result: Rest): number => (result.kind === 'rests' ? 1 : 0);

/** One body on four to twelve springs that do not stand on one line, its center among them. */
function oneBody(r: Random): RestingSystem {
  const places = Array.from({ length: r.whole(4, 12) }, () => [r.between(-1, 1), r.between(-1, 1)] as const);
  const mix = places.map(() => r.next());
  const total = mix.reduce((a, b) => a + b, 0);
  const center = (axis: 0 | 1) => places.reduce((sum, p, i) => sum + (p[axis] * (mix[i] ?? 0)) / total, 0);
  return onGround(
    1,
    [center(0), center(1)],
    places.map(([x, y]) => [x, y, r.between(0.1, 10)]),
  );
}

/** The forces of least energy Σ f²/2k that only push and that balance the weight: a quadratic program. */
function leastEnergy({ bodies: [body], springs }: RestingSystem): readonly number[] {
  if (body === undefined) return [];
  // quadprog counts from 1.
  const from1 = <T>(list: readonly T[]): T[] => [undefined as T, ...list];
  const matrix = springs.map((a) => from1(springs.map((b) => (a === b ? 1 / a.stiffness : 0))));
  const rows = springs.map((s, i) => from1([1, s.x, s.y, ...springs.map((_, j) => (i === j ? 1 : 0))]));
  const right = from1([body.weight, body.weight * body.x, body.weight * body.y, ...springs.map(() => 0)]);
  const { solution } = quadprog.solveQP(from1(matrix), from1(springs.map(() => 0)), from1(rows), right, 3);
  return solution.slice(1);
}

function againstQuadprog(): number {
  const r = randomNumbers(93);
  let worst = 0;
  for (let i = 0; i < 1000; i++) {
    const system = oneBody(r);
    const theirs = leastEnergy(system);
    const ours = rest(system);
    worst = Math.max(
      worst,
      ...system.springs.map((_, j) => Math.abs(force(ours, j) - (theirs[j] ?? Number.NaN))),
    );
  }
  return worst;
}

interface ReactionCase {
  readonly contacts: readonly { readonly x: number; readonly y: number }[];
  readonly centers: readonly { readonly x: number; readonly y: number }[];
}

/** Two to twelve contacts, every fifth set on one line, the center in a hull of one to four places. */
function anyReaction(r: Random, index: number): ReactionCase {
  const line = index % 5 === 0;
  const place = () => ({ x: r.between(-1, 1), y: line ? 0 : r.between(-1, 1) });
  return {
    contacts: Array.from({ length: r.whole(2, 12) }, place),
    centers: Array.from({ length: r.whole(1, 4) }, place),
  };
}

/** The share of the weight on contact 0: f ≥ 0 on contacts, w ≥ 0 on centers, both sum to 1, moments balance. */
const reactionProgram = ({ contacts, centers }: ReactionCase, sign: 1 | -1): LinearProgram => {
  const zeros = (n: number) => Array.from({ length: n }, () => 0);
  const ones = (n: number) => Array.from({ length: n }, () => 1);
  return {
    objective: [...contacts.map((_, i) => (i === 0 ? sign : 0)), ...zeros(centers.length)],
    rows: [
      { of: [...ones(contacts.length), ...zeros(centers.length)], is: '=', right: 1 },
      { of: [...zeros(contacts.length), ...ones(centers.length)], is: '=', right: 1 },
      { of: [...contacts.map((c) => c.x), ...centers.map((c) => -c.x)], is: '=', right: 0 },
      { of: [...contacts.map((c) => c.y), ...centers.map((c) => -c.y)], is: '=', right: 0 },
    ],
  };
};

/** Largest difference of the bounds over a thousand cases; 1 where one says it rests and the other does not. */
const against = (load: () => Promise<Solver>, bound: 'most' | 'least') => async () => {
  const solve = await load();
  const r = randomNumbers(17);
  let worst = 0;
  for (let i = 0; i < 1000; i++) {
    const one = anyReaction(r, i);
    const theirs = solve(reactionProgram(one, bound === 'most' ? 1 : -1));
    const ours = shareBounds(one.contacts, 0, one.centers);
    const difference =
      theirs === undefined || ours === undefined
        ? theirs === undefined && ours === undefined
          ? 0
          : 1
        : Math.abs(ours[bound] - (bound === 'most' ? theirs : -theirs));
    worst = Math.max(worst, difference);
  }
  return worst;
};

const HIGHS = program('HiGHS 1.15.3, a linear program for each of 1,000 random cases');
const GLPK = program('GLPK (glpk.js 5.0.0), a linear program for each of 1,000 random cases');

const row = (
  what: string,
  within: number,
  computed: () => number | Promise<number>,
  source: AnyReference,
): Check => ({ what, source, expected: 0, within, unit: 'W', computed });

export const subject: Subject = {
  subject: 'Bodies at rest: random cases, and other solvers beside ours',
  checks: [
    row(
      'forces and moments left over, worst of 1,000 random systems',
      1e-9,
      thousandSystems('worst', (result, system) => unbalance(system, result)),
      closedForm('Σ f = W and Σ f x = W x of every body'),
    ),
    row(
      'pulling contacts in 1,000 random systems',
      0,
      thousandSystems('sum', (result) =>
        result.kind === 'rests' ? result.forces.filter((f) => f < 0).length : 0,
      ),
      closedForm('contacts push and never pull'),
    ),
    row(
      'random systems left unsolved, of 1,000',
      0,
      thousandSystems('sum', (result) => (result.kind === 'unsolved' ? 1 : 0)),
      closedForm('every system rests or is proved to fall'),
    ),
    row(
      'largest share of the weight on one contact, largest difference',
      1e-8,
      against(highs, 'most'),
      HIGHS,
    ),
    row('least share of the weight on one contact, largest difference', 1e-8, against(highs, 'least'), HIGHS),
    row('largest share of the weight on one contact, largest difference', 1e-8, against(glpk, 'most'), GLPK),
    row('least share of the weight on one contact, largest difference', 1e-8, against(glpk, 'least'), GLPK),
    row(
      'forces of 1,000 bodies on springs, largest difference',
      1e-7,
      againstQuadprog,
      program('quadprog 1.6.1, least energy Σ f²/2k under equilibrium'),
    ),
    {
      what: 'random systems that rest, of 1,000: most',
      source: closedForm('so that the checks above have something to check'),
      expected: 750,
      within: 250,
      unit: '',
      computed: thousandSystems('sum', rests),
    },
  ],
};
