import { workingsOf } from '@cribwright/engine';
import { calculationOf, english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { asphalt, inch, psf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
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
    const bears = g?.bearing.value?.low ?? Number.NaN;
    expect((g?.pressure.value?.high ?? 0) / (load / bears)).toBeCloseTo(1, 9);
    expect(bears).toBeLessThanOrEqual(6 * 3.5 * 24 * 0.0254 ** 2 + 1e-12);
    expect(bears).toBeGreaterThan(0);
  });

  it('offers a pad that would do, with its material', () => {
    const [finding] = onA(on(400 * psf));
    expect(finding?.severity).toBe('danger');
    const [edit] = finding?.fixes[0]?.edits ?? [];
    const text = edit?.kind === 'insert' ? edit.text : '';
    const [, long, wide] = /size +([\d.]+) in by ([\d.]+) in/.exec(text) ?? [];
    const [, thick] = /thickness +([\d.]+) in/.exec(text) ?? [];
    const material = /material +(timber|steel)/.exec(text)?.[1] as 'timber' | 'steel';
    const pad = {
      kind: 'pad',
      id: 'pad/P1',
      name: 'P1',
      length: Number(long) * inch,
      width: Number(wide) * inch,
      thickness: Number(thick) * inch,
      material,
      under: a,
      ref: { element: 'pad/P1' },
    } as const;
    expect(onA(on(400 * psf, { pads: [pad] })).filter((f) => f.severity === 'danger')).toEqual([]);
    // The same pad 0.1 in thick does not do.
    expect(onA(on(400 * psf, { pads: [{ ...pad, thickness: 0.1 * inch }] }))[0]?.severity).toBe('danger');
    // Nor does anybody know what one does of which the material is not stated.
    const { material: _, ...bare } = pad;
    expect(onA(on(400 * psf, { pads: [bare] }))[0]).toMatchObject({
      couldNotRun: true,
      message: { id: 'ground-bearing.pad-material' },
      at: { element: 'pad/P1' },
    });
  });

  it('offers a larger pad in place of one that is too small', () => {
    const pad = {
      kind: 'pad',
      id: 'pad/P1',
      name: 'P1',
      length: 24 * inch,
      width: 24 * inch,
      thickness: 1 * inch,
      material: 'steel',
      under: a,
      ref: { element: 'pad/P1' },
    } as const;
    const [finding] = onA(on(400 * psf, { pads: [pad] }));
    expect(finding?.severity).toBe('danger');
    const edits = finding?.fixes[0]?.edits ?? [];
    expect(edits.map((e) => e.kind === 'set' && `${e.at.element} ${e.at.property}`)).toEqual([
      'pad/P1 size',
      'pad/P1 thickness',
      'pad/P1 material',
    ]);
    const [, long, wide] =
      /([\d.]+) in by ([\d.]+) in/.exec(edits[0]?.kind === 'set' ? edits[0].text : '') ?? [];
    expect(Number(long) * Number(wide)).toBeGreaterThan(24 * 24);
  });

  it('does not pass ground of which nobody knows what it bears', () =>
    expect(onA(on(undefined))[0]?.couldNotRun).toBe(true));

  it('does not pass a base of which nobody knows how large it is', () => {
    const struts = trailerOnCar.struts.map((s) => {
      if (s.gear.kind !== 'rated strut') return s;
      const { footArea: _, ...gear } = s.gear;
      return { ...s, gear };
    });
    const [finding] = check(rule, { ...trailerOnCar, struts }).filter(
      (f) => f.subject.element === 'strut/S1',
    );
    expect(finding).toMatchObject({ couldNotRun: true, severity: 'warning' });
    expect(english(finding?.message)).toMatch(
      /base plate size not known, pressure on asphalt not checked\. .* This check has not passed\.$/,
    );
  });
});

describe('ground-bearing, of a load off the middle', () => {
  /** Two cribs under the rails that touch them with their outer, or with their inner contacts alone. */
  const oneSided = (contacts: 'outer' | 'inner', bearing: number): Plan => ({
    ...on(bearing),
    cribs: trailerOnCar.cribs.map((c) =>
      c.captures[0]?.vehicle === vanTrailer.id
        ? { ...c, captures: c.captures.filter((k) => k.contacts === contacts) }
        : c,
    ),
  });

  it('counts the part of the base that has the load in its middle', () => {
    for (const contacts of ['outer', 'inner'] as const) {
      const g = workingsOf(oneSided(contacts, 4000 * psf))
        .ground()
        .find((r) => r.element === a);
      // Contacts of a 24 in 4×4 crib with 4 in overhang are 24 − 8 − 3.5 = 12.5 in apart: one side is 6.25 in off the
      // middle of a base that is 21 in wide (6 × 3.5 in). It bears on 21 − 12.5 = 8.5 in of it: 2.47 times the mean. What
      // front and rear contact carry apart adds to it. The edge is 4/3 of that beyond the kern.
      const mean = (g?.load.value?.high ?? 0) / (g?.area.value?.low ?? Number.NaN);
      const pressure = g?.pressure.value?.high ?? Number.NaN;
      expect(pressure / mean).toBeGreaterThanOrEqual(21 / 8.5 - 1e-6);
      expect((g?.edge.value?.high ?? 0) / pressure).toBeGreaterThanOrEqual(4 / 3 - 1e-6);
    }
  });

  it('finds a load that only the mean pressure of the whole base would pass, on either side', () => {
    const even = (plan: Plan, id: string) => {
      const g = workingsOf(plan)
        .ground()
        .find((r) => r.element === id);
      return (g?.load.value?.high ?? Number.NaN) / (g?.area.value?.low ?? Number.NaN);
    };
    for (const id of ['crib/A', 'crib/B']) {
      const bearing = 1.3 * even(oneSided('outer', 4000 * psf), id);
      const found = check(rule, oneSided('outer', bearing)).filter((f) => f.subject.element === id);
      expect(found[0]).toMatchObject({ severity: 'danger', message: { id: 'ground-bearing.too-much' } });
    }
  });

  it('warns where the edge alone is pressed harder', () => {
    const g = workingsOf(oneSided('outer', 4000 * psf))
      .ground()
      .find((r) => r.element === a);
    const bearing = 1.1 * (g?.pressure.value?.high ?? Number.NaN);
    const [finding] = onA(oneSided('outer', bearing));
    expect(finding).toMatchObject({ severity: 'warning', message: { id: 'ground-bearing.edge' } });
  });
});
