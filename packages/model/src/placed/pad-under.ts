import type { ElementId } from '../plan/ref.js';
import type { Pad } from '../plan/support.js';

/** The pad that a support stands on: the one it names, else one that says it lies under it. */
export const padUnder = (
  support: ElementId,
  named: ElementId | undefined,
  pads: readonly Pad[],
): Pad | undefined => pads.find((p) => p.id === named) ?? pads.find((p) => p.under === support);
