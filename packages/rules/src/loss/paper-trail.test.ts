import { calculationOf, english } from '@cribwright/messages/testing';
import { trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

const last = analyze(trailerOnCar, { paper: true }).stages.at(-1);
const cases = [last?.asBuilt, last?.losses.find((l) => english(l.title) === 'car gives way')].flatMap(
  (c) => c ?? [],
);
const value = (f: { readonly value: { readonly high: number } | undefined } | undefined) =>
  f?.value?.high ?? Number.NaN;

describe('the sums on paper', () => {
  it('are written for the finished system as built, and when the car gives way, and only when asked for', () => {
    expect(cases.map((c) => english(c.title))).toEqual(['as built', 'car gives way']);
    for (const c of cases) expect(c.paper).toHaveLength(1);
    expect(last?.losses.filter((l) => l.paper !== undefined)).toHaveLength(1);
    expect(analyze(trailerOnCar).stages.at(-1)?.asBuilt.paper).toBeUndefined();
  });

  it.each(cases.map((c) => [c.title, c] as const))('%s: come to the loads of the case', (_title, c) => {
    const [trail] = c.paper ?? [];
    expect(Object.keys(trail?.loads ?? {}).sort()).toEqual(c.reactions.map((r) => r.id).sort());
    for (const r of c.reactions) {
      const load = value(trail?.loads[r.id]);
      expect(load).toBeLessThanOrEqual(r.load.high + 1e-6);
      expect(load).toBeGreaterThanOrEqual(r.load.low - 1e-6);
    }
  });

  it.each(cases.map((c) => [c.title, c] as const))(
    '%s: follow from stiffness and settling alone',
    (_title, c) => {
      for (const load of Object.values(c.paper?.[0]?.loads ?? {})) {
        const input = (key: string) => value(load.inputs.find((f) => f.key === key));
        const settles = load.inputs.filter((f) => f.key === 'settles').map(value);
        const placed = Number.isNaN(input('placed')) ? 0 : input('placed');
        const sum = input('stiffness') * ((settles[0] ?? Number.NaN) - (settles[1] ?? 0) - placed);
        expect(Math.max(0, sum)).toBeCloseTo(value(load), 3);
      }
    },
  );

  it.each(cases.map((c) => [c.title, c] as const))(
    '%s: add up to the weight, at its center of gravity',
    (_title, c) => {
      const [sum, back, across] = c.paper?.[0]?.checks ?? [];
      const trailer = analyze(trailerOnCar).bodies.find((b) => b.name === 'trailer');
      expect(value(sum)).toBeCloseTo(value(trailer?.weight), 3);
      expect(value(back)).toBeCloseTo(value(trailer?.center.x), 6);
      expect(value(across)).toBeCloseTo(value(trailer?.center.y), 6);
      expect(calculationOf(sum)?.numbers.split(' + ').length).toBeGreaterThan(4);
    },
  );
});
