import { crib, tallCrib as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { inch } from '@cribwright/units';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const { group, words, shape } = drawn(plan, analyze(plan), { view: 'height limits', subject: 'crib/A' });

it('names each crib with its height and its limit, the unsafe one in bold with a triangle', () => {
  expect(words('point crib/A')).toEqual(['A: 49 in, limit 24 in']);
  expect(group('point crib/A')).toMatchObject({ worst: 'danger' });
  expect(shape('point crib/A', 'mark').kind).toBe('polygon');
  expect(words()).toContain('B, C, D: 38 1/2 in, limit 48 in');
});

it('never says the limit of one crib of another of the same size', () => {
  // C captures on all its contacts, A and B on two of four: as high as one another, they may not stand as high.
  const mixed = {
    ...plan,
    cribs: [
      crib('C', 9, 1, { courses: 11 }),
      crib('A', 6, 1, { courses: 11 }),
      crib('B', 7, 1, { courses: 11 }),
    ],
  };
  const analysis = analyze(mixed);
  const limits = { 'crib/C': 48, 'crib/A': 24, 'crib/B': 24 } as Readonly<Record<string, number>>;
  const told = drawn(
    mixed,
    {
      ...analysis,
      supports: analysis.supports.map((s) => {
        const [limit, now] = [limits[s.id], s.figures.heightLimit];
        if (limit === undefined || now === undefined) return s;
        const value = { low: limit * inch, high: limit * inch };
        return { ...s, figures: { ...s.figures, heightLimit: { ...now, value } } };
      }),
    },
    { view: 'height limits' },
  );
  expect(told.words()).toContain('C: 38 1/2 in, limit 48 in');
  expect(told.words()).toContain('A, B: 38 1/2 in, limit 24 in');
  expect(told.shape('point crib/C', 'mark').kind).toBe('circle');
  expect(told.shape('point crib/A', 'mark').kind).toBe('polygon');
});

it('draws the limits of the policy as lines of that slope', () => {
  const all = shape('height ratio all contacts', 'limit');
  const some = shape('height ratio some contacts', 'limit');
  if (all.kind !== 'line' || some.kind !== 'line') throw new Error('a limit is not a line');
  const slope = (l: typeof all) => (l.from.y - l.to.y) / (l.to.x - l.from.x);
  // 3 times against 1.5 times the width.
  expect(slope(all) / slope(some)).toBeCloseTo(2, 9);
});
