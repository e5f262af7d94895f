import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { foot } from '@cribwright/units';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const { scene, group, words } = drawn(plan, analyze(plan), { view: 'top' });

it('puts each crib where the plan says, by the frame that drags use', () => {
  const { frame } = scene;
  for (const crib of plan.cribs) {
    const box = boundsOf(group(crib.id));
    const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    expect((x - (frame?.across.origin ?? 0)) / (frame?.across.scale ?? 1)).toBeCloseTo(crib.at.x, 6);
    expect((y - (frame?.down.origin ?? 0)) / (frame?.down.scale ?? 1)).toBeCloseTo(crib.at.y, 6);
    expect((box.right - box.left) / (frame?.across.scale ?? 1)).toBeCloseTo(crib.timber.length, 6);
  }
});

it('measures the main vehicle, and supports from its front and centerline', () => {
  expect(words('length')).toEqual(['53 ft']);
  expect(words()).toEqual(expect.arrayContaining(['A, B: 19 ft 6 in', 'S1, S3: driver side 7 ft 3 in']));
  expect(words()).toContain('FRONT');
});

it('lets cribs, strut bases and the other vehicle be dragged, and says why the main one not', () => {
  expect(group('crib/A').drag).toMatchObject({ moves: 'center', from: plan.cribs[0]?.at });
  expect(group('strut/S1').drag).toMatchObject({ moves: 'base' });
  expect(group('vehicle/car').drag?.fixed).toBeUndefined();
  expect(group('vehicle/trailer').drag?.fixed).toContain('measured from');
  // The trailer's joists from 4 ft on, every base, attract.
  expect(group('crib/A').drag?.snaps.x?.[0]).toBeCloseTo(4 * 0.3048, 6);
});

it.each([
  [0, [-1, 0]],
  [Math.PI / 2, [0, 1]],
  [Math.PI, [1, 0]],
  [(3 * Math.PI) / 2, [0, -1]],
])('points north where the front faces %f rad from it', (facing, way) => {
  // The front points left on the sheet: where it faces east, north is at its left hand, down the sheet.
  const turned = { ...plan, ground: { ...plan.ground, facing } };
  const { group } = drawn(turned, analyze(turned), { view: 'top' });
  const arrow = group('north').items.find((i) => i.kind === 'line');
  if (arrow?.kind !== 'line') throw new Error('no arrow');
  expect(Math.sign(Math.round(arrow.to.x - arrow.from.x))).toBe(way[0]);
  expect(Math.sign(Math.round(arrow.to.y - arrow.from.y))).toBe(way[1]);
});

it('draws no north where nobody says how the vehicle stands to it', () => {
  expect(scene.items.some((i) => i.kind === 'group' && i.key === 'north')).toBe(false);
});

it('shows an anchor in the ground, and measures where it is', () => {
  const [first] = plan.ties;
  if (first === undefined) throw new Error('the sample plan has no tie');
  const bollard = {
    kind: 'ground anchor' as const,
    name: 'Bollard',
    x: 6 * foot,
    y: 20 * foot,
    holds: undefined,
  };
  const tied = {
    ...plan,
    ties: [
      { ...first, to: bollard },
      { ...first, id: 'tie/T9', name: 'T9', to: bollard },
    ],
  };
  const view = drawn(tied, analyze(tied), { view: 'top' });
  expect(view.shape(first.id, 'anchor 2')).toMatchObject({ kind: 'circle', tone: 'tie' });
  expect(view.words()).toEqual(
    expect.arrayContaining(['Bollard: 6 ft', 'Bollard: passenger side 20 ft', 'anchor in the ground']),
  );
  expect(drawn(plan, analyze(plan), { view: 'top' }).words()).not.toContain('anchor in the ground');
});
