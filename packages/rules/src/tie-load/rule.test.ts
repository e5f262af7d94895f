import { workingsOf } from '@cribwright/engine';
import { tieUse } from '@cribwright/engine/internal';
import { lb, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const w = workingsOf(trailerOnCar);
const t2 = w.ties().find((t) => t.tie.name === 'T2');
if (t2 === undefined) throw new Error('the sample has no strap T2');
const pull = tieUse(t2, w).load;
const rated = (rating: number | undefined) => ({
  ...trailerOnCar,
  ties: trailerOnCar.ties.map((t) => ({ ...t, gear: { ...t.gear, rating } })),
});
const on = (rating: number | undefined) =>
  check(rule, rated(rating)).filter((f) => f.subject.element === 'tie/T2');

describe('tie-load', () => {
  // Statics of the base by hand: T = S (cos θ − μ sin θ), with tan θ = 40 / 38, μ = 0.3, the strap straight across.
  it('is the thrust that friction does not hold', () => {
    const along = Math.max(...['S3', 'S4'].map((s) => w.loads().get(`strut/${s}`)?.load.value?.high ?? 0));
    const size = Math.hypot(38, 40);
    expect((pull.value?.high ?? 0) / (along * (38 / size - (0.3 * 40) / size))).toBeCloseTo(1, 9);
  });
  it('finds a strap that pulls more than it may', () => {
    const high = pull.value?.high ?? 0;
    expect(high / lb).toBeGreaterThan(100);
    expect(on(high * 1.01)).toEqual([]);
    expect(on(high * 0.99)[0]?.severity).toBe('danger');
  });
  it('does not pass a strap that nobody rated', () => expect(on(undefined)[0]?.couldNotRun).toBe(true));
});
