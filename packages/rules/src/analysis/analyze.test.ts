import { samplePlans, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from './analyze.js';

const all = Object.entries(samplePlans);

describe('analyze', () => {
  it.each(all)('leaves no support of %s over its capacity without a danger', (_, plan) => {
    const { supports, findings } = analyze(plan);
    const over = supports.filter((s) =>
      [s.figures.use, ...s.contacts.map((c) => c.use)].some((use) => (use?.value?.high ?? 0) > 1 + 1e-9),
    );
    for (const s of over)
      expect(
        findings.some((f) => f.subject.element === s.id && f.severity === 'danger'),
        s.name,
      ).toBe(true);
  });

  it('gives a crib the figures that reports need', () => {
    const crib = analyze(trailerOnCar).supports.find((s) => s.name === 'A');
    expect(Object.keys(crib?.figures ?? {})).toEqual(
      expect.arrayContaining([
        'height',
        'heightLimit',
        'capacity',
        'load',
        'use',
        'asBuilt',
        'pressure',
        'crushing',
      ]),
    );
    expect(crib?.contacts.map((c) => c.meets?.part)).toEqual(['rail', 'joists', 'rail', 'joists']);
  });

  it.each(all)('says of every figure in %s how it is worked out or where it is from', (_, plan) => {
    const { supports, ground, bodies } = analyze(plan);
    const figures = [
      ...supports.flatMap((s) => Object.values(s.figures)),
      ...ground.flatMap((g) => [g.load, g.area, g.pressure, g.allowable]),
      ...bodies.map((b) => b.weight),
    ];
    expect(figures.length).toBeGreaterThan(0);
    const unsaid = figures.filter(
      (f) => f.formula === undefined && f.source.kind === 'computed' && f.key !== 'asBuilt',
    );
    expect(unsaid.map((f) => f.label)).toEqual([]);
  });
});

it('says of a crib that it is used as hard as its hardest-pressed contact', () => {
  for (const s of analyze(trailerOnCar).supports.filter((k) => k.kind === 'crib')) {
    const contacts = s.contacts.map((c) => c.use?.value?.high ?? 0);
    expect(s.figures.use?.value?.high ?? 0).toBeGreaterThanOrEqual(Math.max(...contacts));
  }
});
