import type { Tone } from '../scene/tone.js';

/** Line weights in mm: what carries load is heavy, what measures it is fine. */
export const lineWeights: Readonly<Record<Tone, number>> = {
  ground: 0.5,
  vehicle: 0.4,
  part: 0.3,
  timber: 0.3,
  'timber end': 0.3,
  wedge: 0.3,
  strut: 0.7,
  tie: 0.5,
  chock: 0.35,
  pad: 0.3,
  egress: 0.35,
  cargo: 0.2,
  dimension: 0.18,
  label: 0.2,
  faint: 0.18,
  load: 0.45,
  good: 0.35,
  warning: 0.45,
  danger: 0.5,
  note: 0.35,
  ghost: 0.25,
  scale: 0.25,
};

/** Strokes and gaps of broken lines, mm. */
export const dashes: Readonly<Record<'dashed' | 'short dash' | 'dotted' | 'chain', readonly number[]>> = {
  dashed: [2, 1.2],
  'short dash': [1.1, 0.7],
  dotted: [0.3, 1],
  chain: [4, 1, 0.6, 1],
};

/** Distance between the lines of a hatch, mm. */
export const hatchSpacing = 1.5;
