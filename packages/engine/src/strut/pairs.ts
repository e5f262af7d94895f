import type { Anchor, ElementId, Plan, Strut, Tie, Vehicle } from '@cribwright/model';
import { toVehicle } from '@cribwright/model';

export type Side = 'driver' | 'passenger';

/** Which side of its vehicle a strut leans on: the side its base is out to. */
export function sideOf(strut: Strut, vehicles: ReadonlyMap<ElementId, Vehicle>): Side | undefined {
  const vehicle = vehicles.get(strut.head.vehicle);
  if (vehicle === undefined) return undefined;
  const foot = toVehicle(vehicle, strut.foot).y;
  return Math.abs(foot) < 1e-6 ? undefined : foot < 0 ? 'driver' : 'passenger';
}

const footOf = (anchor: Anchor): ElementId | undefined =>
  anchor.kind === 'strut base' ? anchor.strut : undefined;

/** Ties anchored to a strut's base. */
export const tiesAtFoot = (strut: ElementId, ties: readonly Tie[]): readonly Tie[] =>
  ties.filter((t) => footOf(t.from) === strut || footOf(t.to) === strut);

/** The strut across: on the other side of the same vehicle, nearest along it. */
export function opposite(
  strut: Strut,
  plan: Plan,
  vehicles: ReadonlyMap<ElementId, Vehicle>,
): Strut | undefined {
  const side = sideOf(strut, vehicles);
  const vehicle = vehicles.get(strut.head.vehicle);
  if (side === undefined || vehicle === undefined) return undefined;
  const along = (s: Strut) => toVehicle(vehicle, s.head).x;
  return plan.struts
    .filter((s) => {
      const other = sideOf(s, vehicles);
      return s.head.vehicle === strut.head.vehicle && other !== undefined && other !== side;
    })
    .sort((a, b) => Math.abs(along(a) - along(strut)) - Math.abs(along(b) - along(strut)))[0];
}
