import type { ElementId } from '@cribwright/model';
import { toVehicle } from '@cribwright/model';
import { coupledAbove } from '@cribwright/model/internal';
import { originalSupports } from '../supports/original-supports.js';
import { placedSupports } from '../supports/placed-supports.js';
import { bodyOfPart, type SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';

/** A kingpin with nothing under it: no vehicle of the plan carries it, so that it holds nothing. */
export const isLooseCoupling = (p: SupportPoint): boolean =>
  p.kind === 'part' && p.lower === 'ground' && p.at.z > coupledAbove;

/** Vehicles with a coupling that nothing in the plan carries. */
export const looseVehicles = (w: SupportWorkings): ReadonlySet<ElementId> =>
  new Set(
    originalSupports(w.plan)
      .filter(isLooseCoupling)
      .map((p) => p.upper),
  );

/**
 * Vehicles with a loose coupling whose center of gravity may lie ahead of, or behind, everything else that holds them.
 * By length alone and without loads, so that it can be said at once. The model in space finds the others.
 */
export function unheldNoses(w: SupportWorkings): readonly ElementId[] {
  const loose = looseVehicles(w);
  const original = originalSupports(w.plan);
  return w.plan.vehicles
    .filter((v) => loose.has(v.id))
    .filter((vehicle) => {
      const center = w.masses().get(vehicle.id)?.x.value;
      if (center === undefined) return false;
      const points = [...original, ...placedSupports(w)].filter(
        (p) => p.upper === vehicle.id && !isLooseCoupling(p),
      );
      const heads = w.struts().flatMap(({ strut, placed }) => {
        const part = vehicle.parts.find((p) => p.id === strut.head.part);
        const isMine = strut.head.vehicle === vehicle.id;
        return isMine && part !== undefined && bodyOfPart(vehicle, part) === vehicle.id ? [placed.head] : [];
      });
      const held = [...points.map((p) => p.at), ...heads].map((at) => toVehicle(vehicle, at).x);
      return center.low < Math.min(...held) || center.high > Math.max(...held);
    })
    .map((v) => v.id);
}
