import { expect, it } from 'vitest';
import { sedan, vanTrailer } from '../testing/sample-plans.js';
import { poseOf } from './pose.js';
import { underside } from './underside.js';

const at3 = (x: number, y: number, z: number) => ({ x, y, z });

it('leaves the main vehicle where its own axes are', () => {
  expect(poseOf(vanTrailer)(at3(3, -1, 2))).toEqual(at3(3, -1, 2));
});

it('turns a vehicle by its heading: a car with its rear to the driver side', () => {
  const rear = poseOf(sedan)(at3(sedan.length, 0, 0));
  expect(rear.x).toBeCloseTo(sedan.at.x, 9);
  expect(rear.y).toBeCloseTo(sedan.at.y - sedan.length, 9);
});

it('lays a vehicle on its side and on its roof without lifting it off the ground', () => {
  const corners = [0, vanTrailer.height].flatMap((z) =>
    [-1, 1].map((s) => at3(0, (s * vanTrailer.width) / 2, z)),
  );
  for (const position of [
    { kind: 'on its side', side: 'driver' },
    { kind: 'on its side', side: 'passenger' },
    { kind: 'on its roof' },
  ] as const) {
    const heights = corners.map(poseOf({ ...vanTrailer, position })).map((p) => p.z);
    expect(Math.min(...heights)).toBeCloseTo(0, 9);
    expect(Math.max(...heights)).toBeCloseTo(
      position.kind === 'on its roof' ? vanTrailer.height : vanTrailer.width,
      9,
    );
  }
  // On its driver side, the passenger side is up.
  const up = poseOf({ ...vanTrailer, position: { kind: 'on its side', side: 'driver' } })(
    at3(0, vanTrailer.width / 2, 0),
  );
  expect(up.z).toBeCloseTo(vanTrailer.width, 9);
});

it('pitches nose down about its wheels', () => {
  const pose = poseOf({ ...vanTrailer, position: { kind: 'pitched', angle: 0.1 } });
  expect(pose(at3(0, 0, 0)).z).toBeLessThan(0);
  expect(pose(at3(vanTrailer.length, 0, 0)).z).toBeGreaterThan(0);
});

it('puts a part of a pitched vehicle where the engine finds its underside', () => {
  const pitched = { ...vanTrailer, position: { kind: 'pitched', angle: 0.05 } as const };
  const rail = pitched.parts.find((p) => p.name === 'rail');
  if (rail === undefined) throw new Error('no rail');
  const at = poseOf(pitched)(at3(4, 1, rail.height.low));
  expect(at.z).toBeCloseTo(underside(pitched, rail, at).low, 9);
  expect(at.x).toBe(4);
});
