import type { Pad } from '@cribwright/model';
import { between } from '@cribwright/model';
import { placeStrut } from '@cribwright/model/internal';
import { degree, inch, strut } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { strutWorking } from './strut-working.js';

const pad = (change: Partial<Pad>): Pad => ({
  kind: 'pad',
  id: 'pad/P1',
  name: 'P1',
  length: 18 * inch,
  width: 18 * inch,
  thickness: 4 * inch,
  under: 'strut/S1',
  ref: { element: 'pad/P1' },
  ...change,
});

/** Head 28 to 64 in above the ground, foot 32 in beside it. */
const s1 = strut('S1', 0, 0, 32 * inch, {
  head: { ...strut('S1', 0, 0, 0).head, x: 0, y: 0, z: between(28 * inch, 64 * inch) },
});
const at = (pads: readonly Pad[]) => strutWorking(placeStrut(s1, pads));
const inches = (of: { readonly value: { readonly low: number; readonly high: number } | undefined }) =>
  [of.value?.low, of.value?.high].map((v) => Math.round(((v ?? Number.NaN) / inch) * 1e6) / 1e6);

describe('a strut whose base stands on a pad', () => {
  // Right triangles with whole sides: 24-32-40 with the head at its lowest, 60-32-68 at its highest.
  it('rises from the top of the pad to its head', () => {
    const { run, rise, length, angle } = at([pad({})]);
    expect(inches(run)).toEqual([32, 32]);
    expect(inches(rise)).toEqual([24, 60]);
    expect(inches(length)).toEqual([40, 68]);
    expect((angle.value?.low ?? 0) / degree).toBeCloseTo(36.87, 2);
    expect((angle.value?.high ?? 0) / degree).toBeCloseTo(61.93, 2);
  });

  it('rises from the ground where the pad is under something else', () => {
    expect(inches(at([pad({ under: 'strut/S2' })]).rise)).toEqual([28, 64]);
  });
});
