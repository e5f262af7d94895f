import { drawScene, firstChoice } from '@cribwright/drawing';
import { tallCrib as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { topOf } from './space-labels.js';

const { space } = drawScene(plan, analyze(plan), { ...firstChoice, view: '3d' });

it('names supports and vehicles with the gravest that is found of them', () => {
  const of = (element: string) => space?.things.find((t) => t.ref.element === element);
  expect(of('crib/A')).toMatchObject({ label: 'A', worst: 'danger' });
  expect(of('vehicle/trailer')?.label).toBe('trailer');
  expect(of('crib/B')?.worst).not.toBe('danger');
});

it('puts a name over the middle of its shape, at its highest', () => {
  const crib = plan.cribs[0];
  const thing = space?.things.find((t) => t.ref.element === crib?.id);
  if (crib === undefined || thing === undefined) throw new Error('the crib does not stand in space');
  const top = topOf(thing);
  expect(top.x).toBeCloseTo(crib.at.x, 2);
  expect(top.y).toBeCloseTo(crib.at.y, 2);
  expect(top.z).toBeGreaterThanOrEqual(crib.courses * crib.timber.depth - 1e-9);
});
