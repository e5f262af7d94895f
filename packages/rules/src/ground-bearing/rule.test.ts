import { workingsOf } from '@cribwright/engine';
import { calculationOf, english, hole } from '@cribwright/messages/testing';
import { asphalt, foot, psf, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const on = (bearing: number | undefined, change = {}) => ({
  ...trailerOnCar,
  ground: { ...asphalt, surface: { ...asphalt.surface, bearing } },
  ...change,
});
const a = 'crib/A';
const onA = (plan: typeof trailerOnCar) => check(rule, plan).filter((f) => f.subject.element === a);

describe('ground-bearing', () => {
  it('passes the sample on asphalt', () => expect(onA(trailerOnCar)).toEqual([]));

  it('is pressure = load over area on the ground, as on paper', () => {
    const g = workingsOf(trailerOnCar)
      .ground()
      .find((r) => r.element === a);
    const load = g?.load.value?.high ?? Number.NaN;
    // A solid base of six 3.5 in timbers, 24 in long.
    expect(calculationOf(g?.area)?.numbers).toBe('6 × 3.5 in × 24 in');
    expect((g?.pressure.value?.high ?? 0) / (load / (6 * 3.5 * 24 * 0.0254 ** 2))).toBeCloseTo(1, 9);
  });

  it('says how large a pad would do', () => {
    const [finding] = onA(on(200 * psf));
    expect(finding?.severity).toBe('danger');
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({ kind: 'insert' });
    const size = hole(finding?.fixes[0]?.title.holes.size) ?? '';
    const side = Number(/^(\d+) in by/.exec(size)?.[1]) / 12;
    const pad = {
      kind: 'pad',
      id: 'pad/P1',
      name: 'P1',
      length: side * foot,
      width: side * foot,
      thickness: 0.1,
      under: a,
      ref: { element: 'pad/P1' },
    } as const;
    expect(onA(on(200 * psf, { pads: [pad] }))).toEqual([]);
  });

  it('does not pass ground of which nobody knows what it bears', () =>
    expect(onA(on(undefined))[0]?.couldNotRun).toBe(true));

  it('does not pass a base of which nobody knows how large it is', () => {
    const struts = trailerOnCar.struts.map((s) => {
      if (s.gear.kind !== 'rated strut') return s;
      const { footArea: _, ...gear } = s.gear;
      return { ...s, gear };
    });
    const [finding] = check(rule, { ...trailerOnCar, struts });
    expect(finding).toMatchObject({ couldNotRun: true, severity: 'warning' });
    expect(english(finding?.message)).toMatch(
      /base plate size not known, pressure on asphalt not checked\. .* This check has not passed\.$/,
    );
  });
});
