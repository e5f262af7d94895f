import { inch } from '@cribwright/units';

/**
 * Bearing length factor Cb = (lb + 0.375 in) / lb, for a bearing shorter than 6 in and not nearer than 3 in to the
 * timber's end; else 1. NDS 2018, 3.10.4.
 *
 * @param bearing length of the bearing parallel to grain, m
 * @param toEnd from the bearing to the end of the timber, m
 */
export const bearingLengthFactor = (bearing: number, toEnd: number): number =>
  bearing > 0 && bearing < 6 * inch && toEnd >= 3 * inch - 1e-9 ? (bearing + 0.375 * inch) / bearing : 1;

/**
 * Wet service factor for bearing perpendicular to grain of sawn lumber: a ratio, 0.67 or 1. NDS Supplement 2018, Table
 * 4A.
 */
export const wetServiceFactor = (wet: boolean): number => (wet ? 0.67 : 1);
