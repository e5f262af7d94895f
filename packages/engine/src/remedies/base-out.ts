import type { Strut, Vehicle } from '@cribwright/model';
import { toVehicle } from '@cribwright/model';

/** m that the base of a strut stands out from below its head. `undefined` where that is not straight out from the vehicle. */
export function baseOut({ head, foot }: Pick<Strut, 'head' | 'foot'>, vehicle: Vehicle): number | undefined {
  const [top, base] = [toVehicle(vehicle, head), toVehicle(vehicle, foot)];
  const out = Math.abs(base.y) - Math.abs(top.y);
  return Math.abs(base.x - top.x) < 0.01 && out > 0 ? out : undefined;
}
