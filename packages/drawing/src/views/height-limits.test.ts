import { analyze } from '@cribwright/engine';
import { tallCrib as plan } from '@cribwright/engine/testing';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const { group, words, shape } = drawn(plan, analyze(plan), { view: 'height limits', subject: 'crib/A' });

it('names each crib with its height and its limit, the unsafe one in bold with a triangle', () => {
  expect(words('point crib/A')).toEqual(['A: 49 in, limit 24 in']);
  expect(group('point crib/A')).toMatchObject({ worst: 'danger' });
  expect(shape('point crib/A', 'mark').kind).toBe('polygon');
  expect(words()).toContain('B, C, D: 38.5 in, limit 48 in');
});

it('draws the limits of the policy as lines of that slope', () => {
  const all = shape('height ratio all contacts', 'limit');
  const some = shape('height ratio some contacts', 'limit');
  if (all.kind !== 'line' || some.kind !== 'line') throw new Error('a limit is not a line');
  const slope = (l: typeof all) => (l.from.y - l.to.y) / (l.to.x - l.from.x);
  // 3 times against 1.5 times the width.
  expect(slope(all) / slope(some)).toBeCloseTo(2, 9);
});
