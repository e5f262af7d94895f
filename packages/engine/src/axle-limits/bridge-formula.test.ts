import { describe, expect, it } from 'vitest';
import { type AxleLoad, axleGroups, bridgeFormula, overweight } from './bridge-formula.js';

const axles = (at: readonly number[], load: readonly number[]): readonly AxleLoad[] =>
  at.map((place, i) => ({ at: place, load: load[i] ?? 0 }));
const group = (list: ReturnType<typeof axleGroups>, first: number, last: number) =>
  list.find((g) => g.first === first && g.last === last);

describe('bridge formula', () => {
  // California Vehicle Code 35551, table: the tie at 9 ft and 3 axles (42,750 lb) is printed rounded down.
  it('rounds ties down', () => expect(bridgeFormula(9, 3)).toBe(42_500));

  it('finds the interior group that is over although every axle and the whole are not', () => {
    // FHWA-HOP-19-028, example: axles 2 to 5 carry 68,000 lb where 65,500 lb is allowed.
    const found = axleGroups(axles([0, 16, 20, 47, 51], [12_000, 17_000, 17_000, 17_000, 17_000]));
    expect(group(found, 1, 5)).toMatchObject({ load: 80_000, limit: 80_000 });
    expect(group(found, 1, 3)).toMatchObject({ load: 46_000, limit: 51_000 });
    expect(overweight(found)).toEqual([
      expect.objectContaining({ first: 2, last: 5, load: 68_000, limit: 65_500, by: 'bridge formula' }),
    ]);
  });

  it('lets two tandems 36 ft apart carry 68,000 lb', () => {
    // 23 U.S.C. 127(a): 34,000 lb each, although the formula gives 66,000 lb.
    const found = axleGroups(axles([0, 16, 20, 48, 52], [12_000, 17_000, 17_000, 17_000, 17_000]));
    expect(group(found, 2, 5)).toMatchObject({ limit: 68_000, by: 'two tandems 36 ft apart' });
    expect(group(axleGroups(axles([0, 16, 20, 47.9, 51.9], [0, 0, 0, 0, 0])), 2, 5)?.limit).toBe(66_000);
  });

  it('does not interpolate across 8 ft', () => {
    // California Vehicle Code 35551 prints 34,000 lb for 8 ft and less; Pennsylvania 67 Pa. Code 185.3 prints
    // 38,000 and 42,000 lb for more than 8 ft.
    expect(group(axleGroups(axles([0, 8], [0, 0])), 1, 2)).toMatchObject({ limit: 34_000, by: 'tandem' });
    expect(group(axleGroups(axles([0, 8.1], [0, 0])), 1, 2)?.limit).toBe(38_000);
    expect(group(axleGroups(axles([0, 4, 8], [0, 0, 0])), 1, 3)?.limit).toBe(34_000);
    expect(group(axleGroups(axles([0, 4, 8.1], [0, 0, 0])), 1, 3)?.limit).toBe(42_000);
  });

  it('takes axles within 40 in as one', () =>
    expect(group(axleGroups(axles([0, 40 / 12], [0, 0])), 1, 2)).toMatchObject({
      limit: 20_000,
      by: 'single',
    }));
});
