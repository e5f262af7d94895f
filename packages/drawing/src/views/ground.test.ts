import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan);

it('writes the sum of each strut base, the hardest first', () => {
  const { groups, words } = drawn(plan, analysis, { view: 'ground' });
  const rows = groups.filter((g) => analysis.ground.some((r) => r.element === g.key)).map((g) => g.key);
  const pressure = (key: string) => analysis.ground.find((r) => r.element === key)?.pressure.value?.high ?? 0;
  expect(rows).toEqual([...rows].sort((a, b) => pressure(b) - pressure(a)));
  expect(words('crib/C').join(' ')).toMatch(/lb ÷ .* in² = .* psf/);
});

it('never draws an unknown surface as one that holds', () => {
  const unknown = {
    ...analysis,
    ground: analysis.ground.map((g) => ({ ...g, allowable: { ...g.allowable, value: undefined } })),
  };
  const { shape, words } = drawn(plan, unknown, { view: 'ground' });
  expect(words('crib/C')).toContain('allowable bearing not known');
  expect(words('crib/C')).toContain('?');
  expect(shape('crib/C', 'bar')).toMatchObject({ fill: 'none' });
});
