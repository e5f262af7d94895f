import { english } from '@cribwright/messages/testing';
import type { WorkingLoad } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import { crib, foot, inch, lb, planOf, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';

const weight = 40_000 * lb;
const set = (z: number, force: number, x: number, y: number): WorkingLoad => ({
  id: 'load/generator',
  name: 'generator',
  on: vanTrailer.id,
  at: { x, y, z: 2 },
  force: between(0, force * lb),
  direction: { x: 0, y: 0, z },
  ref: { element: 'load/generator' },
});
const plan = (toolLoads: readonly WorkingLoad[]) =>
  planOf({
    vehicles: [
      {
        ...vanTrailer,
        cargo: [],
        statedWeight: exactly(weight),
        statedCenter: { x: exactly(27 * foot), y: exactly(0), z: exactly(6 * foot) },
      },
    ],
    cribs: [-1, 1].map((s) => crib(s < 0 ? 'A' : 'B', 27 * foot, s * 42.75 * inch)),
    toolLoads,
  });
const last = (loads: readonly WorkingLoad[]) => workingsOf(plan(loads)).stages().at(-1);

describe('a weight set on while crews work', () => {
  const generator = set(-1, 3000, 27 * foot, 3 * foot);

  it('is carried, together with the vehicle', () => {
    const reactions = last([generator])?.asBuilt.reactions ?? [];
    // The least of each is without it; what the cribs take of it they take only because they stood before it came.
    const low = reactions.reduce((sum, r) => sum + r.load.low, 0);
    const high = reactions.reduce((sum, r) => sum + r.load.high, 0);
    expect(low).toBeLessThanOrEqual(weight * (1 + 1e-9));
    expect(high).toBeGreaterThanOrEqual((weight + 3000 * lb) * (1 - 1e-9));
    const onCribs = reactions
      .filter((r) => r.element.startsWith('crib/'))
      .reduce((s, r) => s + r.load.high, 0);
    expect(onCribs).toBeGreaterThan(1000 * lb);
  });

  it('is named where it makes a crib carry most', () => {
    const load = (loads: readonly WorkingLoad[]) => workingsOf(plan(loads)).loads().get('crib/B')?.load;
    expect(load([generator])?.value?.high).toBeGreaterThan((load([])?.value?.high ?? 0) * 1.01);
    expect(english(load([generator])?.governs)).toContain('trailer with tool loads on');
  });

  it('may tip the vehicle where it hangs outside its supports', () => {
    expect(last([])?.asBuilt.rests).toBe(true);
    expect(last([set(-1, 60_000, 27 * foot, 9 * foot)])?.asBuilt.rests).toBe(false);
    expect(last([set(1, 39_900, 27 * foot, 3 * foot)])?.asBuilt.rests).toBe(false);
  });

  it('is not there before what is to hold it', () => {
    const stages = workingsOf(plan([set(-1, 60_000, 27 * foot, 9 * foot)])).stages();
    expect(stages[0]?.asBuilt.rests).toBe(true);
  });
});
