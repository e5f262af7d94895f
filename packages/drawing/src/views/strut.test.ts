import { hastyTrailer, trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan);

it('draws the triangle to scale: its slope is the angle that it says', () => {
  const { shape, words } = drawn(plan, analysis, { view: 'strut', subject: 'strut/S2' });
  const shaft = shape('triangle', 'shaft');
  if (shaft.kind !== 'line') throw new Error('the shaft is not a line');
  const slope = Math.atan2(shaft.from.y - shaft.to.y, shaft.to.x - shaft.from.x);
  const angle = analysis.supports.find((s) => s.id === 'strut/S2')?.figures.angle?.value?.low;
  expect(slope).toBeCloseTo(angle ?? Number.NaN, 6);
  expect(words()).toEqual(expect.arrayContaining(['46.5 deg', '3 ft 2 in', '3 ft 4 in']));
});

it('names the strap at the base with its pull, or says that there is none', () => {
  expect(drawn(plan, analysis, { view: 'strut', subject: 'strut/S1' }).words('tie/T1')[0]).toMatch(
    /^T1 pulls .* lb$/,
  );
  const hasty = drawn(hastyTrailer, analyze(hastyTrailer), { view: 'strut' });
  expect(hasty.words()).toContain('no strap or chain at the base');
  expect(hasty.words()).toContain('pump only');
});
