import { english } from '@cribwright/messages/testing';
import type { Cargo, Vehicle } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import {
  axle,
  foot,
  lb,
  planOf,
  straightTruck,
  tractor,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const texts = (found: ReturnType<typeof check>) => found.map((f) => english(f.message));

/** Five axles with these empty loads, no cargo. */
const fiveAxles = (at: readonly number[], load: readonly number[]): Vehicle => ({
  ...vanTrailer,
  id: 'vehicle/rig',
  name: 'rig',
  parts: [],
  cargo: [],
  axles: at.map((x, i) => axle('rig', `axle ${i + 1}`, x * foot, (load[i] ?? 0) * lb)),
});
const tandems = [12_000, 17_000, 17_000, 17_000, 17_000];

describe('axle-overweight', () => {
  it('leaves ordinary vehicles alone', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
    expect(check(rule, planOf({ vehicles: [straightTruck, tractor] }))).toEqual([]);
  });

  it('finds the interior group of the FHWA example', () => {
    // FHWA-HOP-19-028, example: axles 2 to 5 carry 68,000 lb where 65,500 lb is allowed.
    const found = check(rule, planOf({ vehicles: [fiveAxles([0, 16, 20, 47, 51], tandems)] }));
    expect(texts(found)).toEqual([
      'rig axle 2 to rig axle 5 carry 68,000 lb. The legal limit is 65,500 lb (bridge formula). ' +
        'Check the weights and positions in the plan. If they are right, the truck is overweight.',
    ]);
    expect(found[0]?.at).toEqual({ element: 'vehicle/rig', property: 'axle 2' });
  });

  it('allows the same axles 36 ft apart', () => {
    // 23 U.S.C. 127(a): two consecutive tandems of 34,000 lb at 36 ft or more.
    expect(check(rule, planOf({ vehicles: [fiveAxles([0, 16, 20, 48, 52], tandems)] }))).toEqual([]);
  });

  it('catches a slip in one axle', () => {
    const slip = {
      ...straightTruck,
      axles: straightTruck.axles.map((a) => ({ ...a, emptyLoad: exactly(70_000 * lb) })),
    };
    const [found] = check(rule, planOf({ vehicles: [{ ...slip, cargo: [] }] }));
    expect(english(found?.message)).toContain(
      'truck axle 1 carries 70,000 lb. The legal limit is 20,000 lb (single axle).',
    );
  });

  it('puts cargo on axles by the lever rule and takes the heavy end', () => {
    // Axles at 4 and 24 ft, 6,500 lb empty on the rear one; cargo 10,000 to 14,000 lb, its center at 24 ft: all of
    // it on the rear axle: 6,500 + 14,000 = 20,500 lb.
    const cargo: Cargo[] = straightTruck.cargo.map((c) => ({
      ...c,
      weight: between(10_000 * lb, 14_000 * lb),
      center: exactly(24 * foot),
    }));
    const [found] = check(rule, planOf({ vehicles: [{ ...straightTruck, cargo }] }));
    expect(english(found?.message)).toContain('truck axle 2 carries 20,500 lb. The legal limit is 20,000 lb');
    expect(found?.at).toEqual({ element: 'vehicle/truck', property: 'cargo' });
    expect(english(found?.governs)).toBe('cargo at its heaviest, wherever it may lie');
  });

  it('says nothing where some place of the cargo would be legal', () => {
    // 42,000 lb with its center between 18 ft 8 in and 33 ft 4 in: the tandem carries 22,800 to 36,600 lb.
    expect(check(rule, planOf({ vehicles: [vanTrailer] }))).toEqual([]);
  });

  it('hands a trailer over to its tractor through the kingpin', () => {
    const coupled = planOf({
      vehicles: [tractor, { ...vanTrailer, at: { x: 18 * foot, y: 0 } }],
      contacts: [
        {
          id: 'contact/fifth wheel',
          lower: 'vehicle/tractor',
          upper: 'vehicle/trailer',
          upperPart: 'kingpin',
          points: [{ x: 21 * foot, y: 0 }],
          coupled: true,
          stiffness: 1e7,
          ref: { element: 'vehicle/trailer', property: 'coupled' },
        },
      ],
    });
    expect(check(rule, coupled)).toEqual([]);
    const heavier = {
      ...coupled,
      vehicles: coupled.vehicles.map((v) => ({
        ...v,
        cargo: v.cargo.map((c) => ({ ...c, weight: exactly(52_000 * lb) })),
      })),
    };
    // 19,300 + 14,000 + 52,000 lb = 85,300 lb on five axles, wherever the cargo lies.
    expect(texts(check(rule, heavier))).toContainEqual(
      expect.stringContaining(
        'tractor axle 1 to trailer axle 2 carry 85,300 lb. The legal limit is 80,000 lb (whole truck).',
      ),
    );
  });

  it('says so where it cannot tell', () => {
    const three = { ...fiveAxles([0, 15, 30], [5000, 5000, 5000]), cargo: vanTrailer.cargo };
    const [found] = check(rule, planOf({ vehicles: [three] }));
    expect(found).toMatchObject({ couldNotRun: true, severity: 'note' });
  });
});
