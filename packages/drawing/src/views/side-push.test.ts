import { english } from '@cribwright/messages/testing';
import { truckOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { wayWords } from '../pieces/push-rose.js';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan, { push: true });
const { group, groups, words, scene, shape } = drawn(plan, analysis, { view: 'side push' });

it('reaches as far in each direction as the share it holds', () => {
  const { push } = analysis;
  const lengths = push?.directions.map((d, i) => {
    const spoke = shape(`direction ${i}`, 'spoke');
    if (spoke.kind !== 'line') throw new Error('a spoke is not a line');
    return {
      share: d.share.value?.low ?? 0,
      long: Math.hypot(spoke.to.x - spoke.from.x, spoke.to.y - spoke.from.y),
    };
  });
  expect(lengths).toHaveLength(24);
  const scale = Math.max(...(lengths ?? []).map((l) => l.long / l.share));
  for (const { share, long } of lengths ?? []) expect(long).toBeCloseTo(share * scale, 6);
});

it('marks with a triangle what is less than the policy asks, and names what gives first', () => {
  const asked = plan.policy.limits['push margin'].value;
  const weak = analysis.push?.directions.filter((d) => (d.share.value?.low ?? 0) < Number(asked)) ?? [];
  const marked = groups.filter(
    (g) => g.key.startsWith('direction') && g.items.some((i) => i.kind === 'polygon'),
  );
  expect(marked).toHaveLength(weak.length);
  const first = analysis.push?.directions[0]?.givesFirst;
  expect(group('direction 0').name).toContain(english(first?.how) ?? 'holds up to');
});

it('names each of the 24 directions by a name of its own', () => {
  const names = analysis.push?.directions.map((d) => english(wayWords(d.angle))) ?? [];
  expect(new Set(names).size).toBe(24);
  expect(names[0]).toBe('rear');
  // 15 degrees past the rear, toward the passenger side.
  expect(names[1]).toBe('rear, 15 deg to passenger side');
  expect(names[18]).toBe('driver side');
});

it('says holds up to, and never safe to', () => {
  expect(words().join(' ')).toContain('The smallest push held is');
  expect(words().join(' ')).not.toMatch(/safe to/);
});

it('has rings at shares that a reader can count by', () => {
  const rings = scene.items.flatMap((i) =>
    i.kind === 'text' && i.key.startsWith('ring words') ? [i.text] : [],
  );
  const shares = rings.map((words) => Number.parseFloat(words));
  expect(shares.length).toBeGreaterThan(1);
  const [step = Number.NaN] = shares;
  expect([1, 2, 5, 10, 20, 25, 50, 100]).toContain(step);
  expect(shares).toEqual(shares.map((_, i) => step * (i + 1)));
});
