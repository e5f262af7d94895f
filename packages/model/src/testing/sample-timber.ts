import type { Timber } from '../plan/support.js';
import { inch, psi } from './measures.js';

/** Douglas fir-larch 4×4, dressed 3.5 in, 24 in long. */
export const fir4x4: Timber = {
  name: 'Fir4x4',
  nominal: '4x4',
  width: 3.5 * inch,
  depth: 3.5 * inch,
  length: 24 * inch,
  species: 'Douglas fir-larch',
  perpendicularToGrain: 625 * psi,
  modulusAcross: 80_000 * psi,
  modulusAlong: 1_600_000 * psi,
  modulusMin: 580_000 * psi,
  parallelToGrain: 1350 * psi,
  wet: false,
  density: 545,
  source: { kind: 'published', title: 'NDS Supplement 2018', locator: 'Table 4A' },
  ref: { element: 'timber/Fir4x4' },
};

export const fir6x6: Timber = {
  ...fir4x4,
  name: 'Fir6x6',
  nominal: '6x6',
  width: 5.5 * inch,
  depth: 5.5 * inch,
  length: 30 * inch,
  ref: { element: 'timber/Fir6x6' },
};
