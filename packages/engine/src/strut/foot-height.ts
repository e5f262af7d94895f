import type { Plan } from '../model/plan.js';
import type { Strut } from '../model/support.js';

/** How high a strut's base stands above the ground: on its pad, or on one said to be under it. */
export const footHeight = ({ id, foot }: Strut, pads: Plan['pads']): number =>
  pads.find((p) => p.id === foot.pad || p.under === id)?.thickness ?? 0;
