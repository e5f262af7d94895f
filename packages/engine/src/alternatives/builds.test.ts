import { fir4x4, fir6x6, inch, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { bestBuildFor, buildsFor, stockOf } from './builds.js';

const w = workingsOf(trailerOnCar);
const a = w.cribs().find((c) => c.crib.name === 'A');
if (a === undefined) throw new Error('the sample has no crib A');
const stock = (timber: typeof fir4x4, count?: number) => [{ timber, count }];

describe('design help', () => {
  it('finds the crib that is there, and ranks by fewest timbers', () => {
    const found = buildsFor(a, w, stock(fir4x4));
    expect(found[0]?.crib).toMatchObject({ courses: 11, layout: { lengthwise: 2, crosswise: 2 } });
    expect(found.map((b) => b.timbers)).toEqual([...found.map((b) => b.timbers)].sort((x, y) => x - y));
    expect(found.length).toBeGreaterThan(1);
  });

  it('gives the first of these without the others', () => {
    expect(bestBuildFor(a, w)).toEqual(buildsFor(a, w)[0]);
  });

  it('offers only what reaches, stands and carries', () => {
    for (const b of buildsFor(a, w, [...stock(fir4x4), ...stock(fir6x6)])) {
      expect(b.use).toBeLessThanOrEqual(1);
      expect(b.height.value?.high ?? Number.NaN).toBeLessThanOrEqual(b.heightLimit.value?.low ?? 0);
      const left = 40 * inch - (b.height.value?.high ?? 0);
      expect(left).toBeGreaterThanOrEqual(0.5 * inch - 1e-9);
      expect(left).toBeLessThanOrEqual(2 * inch + 1e-9);
    }
  });

  it('builds with no more than there is', () => {
    const fewest = buildsFor(a, w, stock(fir4x4))[0]?.timbers ?? 0;
    expect(buildsFor(a, w, stock(fir4x4, fewest - 1))).toEqual([]);
  });

  it('offers nothing where the load is not known', () => {
    const unknown = workingsOf({
      ...trailerOnCar,
      vehicles: trailerOnCar.vehicles.map((v) => ({
        ...v,
        axles: [],
        parts: v.parts.map(({ carries: _, ...p }) => p),
      })),
    });
    const crib = unknown.cribs().find((c) => c.crib.name === 'A');
    expect(crib === undefined ? undefined : buildsFor(crib, unknown, stock(fir4x4))).toEqual([]);
  });

  it('takes its stock from the units, or else from the plan', () => {
    expect(stockOf(trailerOnCar).map((s) => s.timber.name)).toEqual(['Fir4x4']);
    const carries = [
      {
        kind: 'timber',
        item: 'Fir6x6',
        length: 30 * inch,
        timber: fir6x6,
        count: 16,
        ref: fir6x6.ref,
      } as const,
    ];
    const units = [{ id: 'cache/P', name: 'P', people: 4, carries, ref: fir6x6.ref }];
    expect(stockOf({ ...trailerOnCar, units })).toEqual([{ timber: fir6x6, count: 16 }]);
  });
});
