import { workingsOf } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import {
  crib,
  fir6x6,
  foot,
  inch,
  lb,
  planOf,
  policyWith,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

/** The trailer with so much in it, its center at 20 ft, and one crib under each rail. */
const loaded = (pounds: number, change: Parameters<typeof crib>[3] = {}): Plan =>
  planOf({
    vehicles: [
      {
        ...vanTrailer,
        axles: vanTrailer.axles.map((a) => ({ ...a, missing: ['driver', 'passenger'] as const })),
        cargo: vanTrailer.cargo.map((c) => ({
          ...c,
          weight: exactly(pounds * lb),
          center: exactly(30 * foot),
          offset: exactly(0),
        })),
      },
    ],
    cribs: [-1, 1].map((side) => crib(side < 0 ? 'A' : 'B', 36.5 * foot, side * 42.75 * inch, change)),
  });

describe('crib-load', () => {
  it('passes the sample', () => expect(check(rule, trailerOnCar)).toEqual([]));

  // Statics by hand: no wheels, so kingpin at 3 ft and cribs at 36.5 ft carry it all. 14,000 lb empty at 30.95 ft
  // and 60,000 lb at 30 ft: the cribs take (14,000 × 27.95 + 60,000 × 27) / 33.5 = 60,037 lb, 30,019 lb each.
  it('finds a crib that carries more than 24,000 lb on four contacts', () => {
    const plan = loaded(60_000);
    const load = workingsOf(plan).loads().get('crib/A')?.load.value?.high ?? 0;
    const empty = (5400 * 3 + 4300 * 97) / 14_000;
    const both = (14_000 * (empty - 3) + 60_000 * 27) / 33.5;
    expect(load / lb).toBeGreaterThan(both / 2 - 1);
    const [finding] = check(rule, plan);
    expect(finding?.severity).toBe('danger');
    expect(english(finding?.message)).toMatch(
      /^Crib A, contact \d: load up to [\d,]+ lb \(.+\)\. Capacity 6,000 lb/,
    );
  });

  it('passes the same cribs under a light load', () => expect(check(rule, loaded(5000))).toEqual([]));

  it('offers larger timbers that carry it, and not more of the same: the load may come down beside them', () => {
    const plan = loaded(60_000);
    expect(check(rule, plan)[0]?.fixes).toEqual([]);
    const carries = [
      { kind: 'timber', item: 'Fir6x6', length: 30 * inch, timber: fir6x6, count: 60, ref: fir6x6.ref },
    ] as const;
    const units = [{ id: 'cache/P', name: 'P', people: 4, carries, ref: fir6x6.ref }];
    const fix = check(rule, { ...plan, units })[0]?.fixes[0];
    const timber = fix?.edits.find((e) => e.kind === 'set' && e.at.property === 'timber');
    expect(timber?.kind === 'set' ? timber.text : '').toContain('Fir6x6');
    expect(english(fix?.title)).toContain('courses');
  });

  it('holds to a stricter policy, and says so', () => {
    const use = workingsOf(loaded(20_000)).loads().get('crib/A#1')?.load.value?.high ?? 0;
    expect(use).toBeGreaterThan(0);
    const strict = { ...loaded(20_000), policy: policyWith('use limit', 0.3) };
    const [finding] = check(rule, strict);
    expect(finding?.severity).toBe('danger');
    expect(finding?.message.id).toBe('crib-load.over-limit');
  });

  it('does not pass a load that nobody knows', () => {
    const unknown = loaded(5000);
    const vehicles = unknown.vehicles.map((v) => ({
      ...v,
      axles: [],
      parts: v.parts.map(({ carries: _, ...p }) => p),
    }));
    expect(check(rule, { ...unknown, vehicles })[0]?.couldNotRun).toBe(true);
  });

  it('leaves a crib that ends below the load to the rule on reach', () =>
    expect(check(rule, loaded(60_000, { courses: 8 }))).toEqual([]));
});
