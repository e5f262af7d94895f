import type { Figure, Phrase, QuantityKind } from '@cribwright/messages';
import type { Head } from './compute.js';

type Rounding = Figure['rounding'];

const head =
  (quantity: QuantityKind) =>
  (key: string, label: Phrase, rounding: Rounding, more: Partial<Head> = {}): Head => ({
    key,
    label,
    quantity,
    rounding,
    ...more,
  });

/** Heads of figures, one for each kind of number a plan shows. */
export const length = head('length');
/** A place along a vehicle: `26 ft 6 in`, or meters. */
export const place = head('place');
/** A place or a length inside a calculation, in feet and tenths or meters: to be multiplied by hand. */
export const span = head('span');
export const force = head('force');
export const angle = head('angle');
export const area = head('area');
export const stress = head('stress');
export const pressure = head('pressure');
export const duration = head('duration');
export const share = head('share');
export const ratio = head('ratio');
export const count = head('count');
export const volume = head('volume');
export const unitWeight = head('unit weight');
