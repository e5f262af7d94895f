import assert from 'node:assert/strict';
import { setImmediate as turn } from 'node:timers/promises';
import type { Analysis } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { analyze } from '@cribwright/rules';
import fc from 'fast-check';
import { anyPlan } from './any-plan.js';
import { assertNoEasier } from './burdens.js';
import { apart, exact, heavier, snug, withCargoAtCenter } from './changed-plans.js';
import { onEdge } from './on-edge.js';

/**
 * More weight at a center of gravity that stays, and what it can never make easier.
 *
 * - Everything heavier at the same rate: every load grows at that rate, whatever rests on whatever.
 * - One vehicle heavier that touches no other: the same for all that holds it, and nothing changes for the rest.
 * - More cargo where its center of gravity is: the same.
 *
 * It holds of what is snug. It does not hold where a wedge or a strut is driven tight, where vehicles touch and one of
 * them gets heavier, where weight goes elsewhere than to the center of gravity, or of a push counted as a force:
 * `eased.test.ts` has a case of each.
 */
const runs = 120;

/**
 * Less than this is the last digit of a sum and no more weight: there, now and then, a search still stops short of its
 * bound with one of two weights and not with the other, and the check of that case then says that it could not run.
 */
const leastMore = 1 + 1e-6;

async function tried(
  check: (plan: Plan, by: number, pick: number) => number,
  least: number,
): Promise<string> {
  let seen = 0;
  const more = fc.double({ min: leastMore, max: 8, noNaN: true });
  await fc.assert(
    fc.asyncProperty(anyPlan, more, fc.nat(5), async (plan, by, pick) => {
      seen += check(plan, by, pick);
      await turn();
    }),
    { endOnFailure: true, numRuns: runs },
  );
  assert.ok(seen > least, `only ${seen} numbers were compared`);
  return `${seen} numbers compared`;
}

/** Nothing is compared where a body stands exactly on a line. */
function compared(light: Plan, heavy: (analysis: Analysis) => Plan | undefined, slack?: number): number {
  const before = analyze(light);
  const more = onEdge(light, before) ? undefined : heavy(before);
  return more === undefined ? 0 : assertNoEasier(before, analyze(more), slack);
}

/** The last digit of a sum may turn a search between the ends of ranges another way: it then ends as near as this. */
const searched = 0.01;

export const moreWeight: Readonly<Record<string, () => Promise<string>>> = {
  'adding weight to everything never raises a margin': () =>
    tried((plan, by) => compared(snug(plan), () => heavier(snug(plan), by), searched), 2000),

  'adding weight to one vehicle never raises a margin of what holds it': () =>
    tried((plan, by, pick) => {
      const one = apart(snug(plan));
      const vehicle = one.vehicles[pick % Math.max(1, one.vehicles.length)];
      return vehicle === undefined ? 0 : compared(one, () => heavier(one, by, vehicle.id), searched);
    }, 2000),

  'adding cargo at the center of gravity never raises a margin': () =>
    tried((plan, by) => {
      const one = apart(snug(exact(plan)));
      return compared(one, (analysis) => withCargoAtCenter(one, analysis, by * 10_000));
    }, 500),
};
