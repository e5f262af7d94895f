import { between, exactly } from '../plan/interval.js';
import type { Chock, Crib, Strut, StrutGear, Tie } from '../plan/support.js';
import { foot, inch, lb } from './measures.js';
import { fir4x4 } from './sample-timber.js';

/** A 2 by 2 crib of 4×4 that reaches a rail at 40 in: 11 courses and one pair of wedges. */
export const crib = (name: string, x: number, y: number, change: Partial<Crib> = {}): Crib => {
  const id = `crib/${name}`;
  return {
    kind: 'crib',
    id,
    name,
    timber: fir4x4,
    layout: { lengthwise: 2, crosswise: 2 },
    base: 'solid',
    top: 'lengthwise',
    courses: 11,
    overhang: 4 * inch,
    wedges: { pairs: 4, travel: between(0.5 * inch, 2 * inch), preload: 0 },
    shims: 0,
    standsOn: { kind: 'ground' },
    at: { x, y },
    captures: [
      {
        vehicle: 'vehicle/trailer',
        part: 'rail',
        contacts: 'outer',
        ref: { element: id, property: 'captures' },
      },
      {
        vehicle: 'vehicle/trailer',
        part: 'joists',
        contacts: 'inner',
        ref: { element: id, property: 'captures' },
      },
    ],
    slidIn: false,
    ref: { element: id },
    ...change,
  };
};

export const longStrut: StrutGear = {
  kind: 'rated strut',
  name: 'Strut4to8ft',
  shortest: 4 * foot,
  longest: 8 * foot,
  footArea: (12 * inch) ** 2,
  ratings: [
    { length: 4 * foot, load: 12_000 * lb },
    { length: 6 * foot, load: 10_000 * lb },
    { length: 8 * foot, load: 7000 * lb },
  ],
  source: { kind: 'invented' },
  ref: { element: 'strut type/Strut4to8ft' },
};

/** A strut with its head under the trailer's rail. */
export const strut = (
  name: string,
  x: number,
  headY: number,
  footY: number,
  change: Partial<Strut> = {},
): Strut => {
  const id = `strut/${name}`;
  return {
    kind: 'strut',
    id,
    name,
    gear: longStrut,
    head: {
      vehicle: 'vehicle/trailer',
      part: 'rail',
      x,
      y: headY,
      z: exactly(40 * inch),
      ref: { element: id, property: 'head' },
    },
    foot: { x, y: footY, ref: { element: id, property: 'base' } },
    statedAngle: undefined,
    lock: 'pinned',
    preload: 0,
    ref: { element: id },
    ...change,
  };
};

/** A 4 in ratchet strap between two strut bases. */
export const strap = (name: string, from: string, to: string, change: Partial<Tie> = {}): Tie => ({
  kind: 'tie',
  id: `tie/${name}`,
  name,
  gear: {
    kind: 'strap',
    name: 'RatchetStrap4in',
    rating: 4000 * lb,
    source: { kind: 'published', title: '49 CFR 393.108', locator: 'webbing table' },
  },
  from: { kind: 'strut base', strut: `strut/${from}` },
  to: { kind: 'strut base', strut: `strut/${to}` },
  pretension: 0,
  ref: { element: `tie/${name}` },
  ...change,
});

export const chock = (name: string, vehicle: string, change: Partial<Chock> = {}): Chock => ({
  kind: 'chock',
  id: `chock/${name}`,
  name,
  vehicle: `vehicle/${vehicle}`,
  axle: undefined,
  ways: 'both',
  ref: { element: `chock/${name}` },
  ...change,
});
