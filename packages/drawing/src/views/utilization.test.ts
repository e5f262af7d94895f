import { calculationOf, english } from '@cribwright/messages/testing';
import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan);
const view = drawn(plan, analysis, { view: 'utilization' });

it('has a bar as long as the share, the worst first, with the governing case', () => {
  const limit = boundsOf(view.shape('crib/D', 'limit')).left;
  const rows = view.groups.filter((g) => analysis.supports.some((s) => s.id === g.key));
  const shares = rows.map(
    (g) => analysis.supports.find((s) => s.id === g.key)?.figures.use?.value?.high ?? Infinity,
  );
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  for (const [i, row] of rows.entries()) {
    const frame = boundsOf(view.shape(row.key, 'frame'));
    const bar = boundsOf(view.shape(row.key, 'bar'));
    const share = Math.min(shares[i] ?? 0, 1.25);
    expect((bar.right - bar.left) / (limit - frame.left)).toBeCloseTo(share, 6);
  }
  const governs = english(analysis.supports.find((s) => s.id === 'crib/D')?.figures.use?.governs) ?? '?';
  expect(view.words('crib/D').join(' ')).toContain(governs.slice(0, 30));
});

it('draws a use over the limit in the pattern of danger, and an unknown one with a sign of its own', () => {
  const change = (value: { low: number; high: number } | undefined) => ({
    ...analysis,
    supports: analysis.supports.map((s) =>
      s.id === 'crib/A' && s.figures.use !== undefined
        ? { ...s, figures: { ...s.figures, use: { ...s.figures.use, value } } }
        : s,
    ),
  });
  const over = drawn(plan, change({ low: 1.09, high: 1.09 }), { view: 'utilization' });
  expect(over.group('crib/A')).toMatchObject({ worst: 'danger' });
  expect(over.shape('crib/A', 'bar')).toMatchObject({ tone: 'danger', fill: 'cross' });
  expect(over.words('crib/A')).toContain('109 %');
  const unknown = drawn(plan, change(undefined), { view: 'utilization' });
  expect(unknown.words('crib/A')).toEqual(expect.arrayContaining(['?', 'not known']));
  expect(unknown.scene.words).toContain('crib A: utilization not known');
});

it('says the sum of the worst contact where the whole load over the whole capacity is another share', () => {
  const rows = analysis.supports.filter((s) => s.kind === 'crib' && s.figures.use?.value !== undefined);
  const share = (s: (typeof rows)[number]) =>
    (s.figures.load?.value?.high ?? Number.NaN) / (s.figures.capacity?.value?.low ?? Number.NaN);
  const uneven = rows.filter((s) => Math.abs((s.figures.use?.value?.high ?? 0) - share(s)) > 0.02);
  expect(uneven.length).toBeGreaterThan(0);
  for (const s of uneven)
    expect(view.words(s.id).join(' ')).toContain(`worst contact ${calculationOf(s.figures.use)?.numbers}`);
});
