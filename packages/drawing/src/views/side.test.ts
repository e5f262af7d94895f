import { term } from '@cribwright/messages';
import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const { scene, group, words } = drawn(plan, analyze(plan), { view: 'side' });

it('stands everything on the ground line, as high as it is', () => {
  const { down } = scene.frame ?? { down: { origin: 0, scale: 1 } };
  const box = boundsOf(group('crib/A'));
  expect(box.bottom).toBeCloseTo(down.origin, 6);
  // 11 courses of 3.5 in and the wedges that close the gap to the rail at 40 in.
  expect((box.top - down.origin) / down.scale).toBeCloseTo(40 * 0.0254, 6);
});

it('names heights at the side and shared labels once', () => {
  expect(words()).toContain('13 ft 6 in: top of trailer');
  expect(words()).toContain('A, B');
  expect(words()).not.toContain('B');
});

it('draws what stands on the far side in broken lines', () => {
  const broken = (key: string) => group(key).items.every((i) => i.kind !== 'polygon' || i.dash === 'dashed');
  expect(broken('crib/B')).toBe(true);
  expect(broken('crib/A')).toBe(false);
});

it('tells of supports that share a label the most that any of them is used', () => {
  const analysis = analyze(plan);
  const uses = new Map(analysis.supports.map((s) => [s.name, s.figures.use?.value?.high ?? 0]));
  const labels = drawn(plan, analysis, { view: 'side' }).groups.filter((g) => g.key.startsWith('label '));
  const shared = labels.flatMap((g) => {
    const [name = '', ...told] = g.items.flatMap((i) => (i.kind === 'text' ? [i.text] : []));
    return name.includes(', ') ? [{ names: name.split(', '), told: told.join(' ') }] : [];
  });
  expect(shared.length).toBeGreaterThan(1);
  for (const { names, told } of shared) {
    const worst = Math.max(...names.map((n) => uses.get(n) ?? Number.NaN));
    const share = Number(/([\d.]+) %/.exec(told)?.[1]) / 100;
    // Printed to whole percents at most, and up.
    expect(share).toBeGreaterThanOrEqual(worst - 1e-9);
    expect(share).toBeLessThan(worst + 0.01);
    if (new Set(names.map((n) => uses.get(n))).size > 1) expect(told).toContain('at most');
  }
});

it('names what is unsafe apart from what is not, each with its own sign', () => {
  const analysis = analyze(plan);
  const danger = {
    rule: 'crib-load',
    severity: 'danger' as const,
    subject: { element: 'crib/B' },
    at: { element: 'crib/B' },
    message: term('crib-load.title'),
    figures: [],
    related: [],
    fixes: [],
  };
  const view = drawn(plan, { ...analysis, findings: [danger] }, { view: 'side' });
  expect(view.words('label crib/B')).toEqual(expect.arrayContaining(['!', 'B']));
  expect(view.words('label crib/A')).not.toContain('!');
  expect(view.words()).toContain('Unsafe: B');
});

it('names supports apart that are not of the same height', () => {
  const low = plan.cribs.map((c) => (c.name === 'B' ? { ...c, courses: c.courses - 1 } : c));
  const lower = { ...plan, cribs: low };
  const names = drawn(lower, analyze(lower), { view: 'side' }).words();
  expect(names).toContain('A');
  expect(names).toContain('B');
  expect(names).not.toContain('A, B');
});
