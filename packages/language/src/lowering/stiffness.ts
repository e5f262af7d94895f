import type { SourceNote } from '@cribwright/messages';
import { inch, poundForce } from '@cribwright/units';

/** lb/in as N/m. */
const poundPerInch = poundForce / inch;

/**
 * One end of an axle, tire and suspension together, where a plan says nothing: round figures from memory. The
 * analysis varies stiffnesses by the policy's spread and says where that matters.
 */
export const usualStiffness = {
  air: 3000 * poundPerInch,
  spring: 5000 * poundPerInch,
  rigid: 8000 * poundPerInch,
};
export const usualMount = {
  air: 300 * poundPerInch,
  spring: 1500 * poundPerInch,
  rigid: 20_000 * poundPerInch,
};
export const usualPoint = 20_000 * poundPerInch;
export const fromMemory: SourceNote = { kind: 'from memory' };
