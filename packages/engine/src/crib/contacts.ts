import type { ElementId } from '../model/ref.js';
import type { Capture, Crib } from '../model/support.js';
import type { Part, Vehicle } from '../model/vehicle.js';
import { toVehicle } from '../vehicle/frame.js';
import { type PartPlace, partNamed, placeAt } from '../vehicle/part-place.js';
import { type Crossing, crossings } from './layout.js';

/** A crossing and what it meets above. */
export interface Contact extends Crossing {
  /** What the plan gives it to meet, whether it does or not. Empty where the plan gives it nothing. */
  readonly given: readonly Met[];
  /** The one it does meet. */
  readonly meets: Met | undefined;
  readonly loaded: boolean;
}

export interface Met {
  readonly capture: Capture;
  readonly vehicle: Vehicle;
  readonly part: Part;
  /** Where the nearest piece of the part is. */
  readonly place: PartPlace;
  /** Whether the contact counts as under it. */
  readonly hit: boolean;
}

type Vehicles = ReadonlyMap<ElementId, Vehicle>;

/**
 * Every contact of a crib with the part that it meets.
 *
 * A contact counts where the part lies over its top timber, at most `reach` along the timber from the contact.
 * Across the timber nothing helps: a joist beside it carries nothing.
 */
export function contactsOf(crib: Crib, vehicles: Vehicles, reach: number): readonly Contact[] {
  const all = crossings(crib);
  return all.map((crossing) => {
    const given = crib.captures.flatMap((capture) => {
      const vehicle = vehicles.get(capture.vehicle);
      const part = vehicle === undefined ? undefined : partNamed(vehicle, capture.part);
      if (vehicle === undefined || part === undefined || !takes(capture, crossing, all, vehicle)) return [];
      const place = placeAt(vehicle, part, crossing);
      return place === undefined ? [] : [{ capture, vehicle, part, place, hit: covers(place, crib, reach) }];
    });
    const meets = given.find((g) => g.hit);
    return { ...crossing, given, meets, loaded: meets !== undefined };
  });
}

/** Whether a part at that place lies over the top timber, near enough to the contact. */
export function covers(place: PartPlace, crib: Crib, reach: number): boolean {
  const along = Math.abs(crib.top === 'lengthwise' ? place.off.x : place.off.y);
  const across = Math.abs(crib.top === 'lengthwise' ? place.off.y : place.off.x);
  return along <= reach + 1e-9 && across < crib.timber.width / 2 - 1e-9;
}

/** Whether the plan gives this contact to that capture. */
function takes(capture: Capture, crossing: Crossing, all: readonly Crossing[], vehicle: Vehicle): boolean {
  const local = all.map((c) => ({ c, at: toVehicle(vehicle, c) }));
  const own = toVehicle(vehicle, crossing);
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const farthest = Math.max(...local.map(({ at }) => Math.abs(at.y)));
  switch (capture.contacts ?? 'all') {
    case 'all':
      return true;
    case 'outer':
      return same(Math.abs(own.y), farthest);
    case 'inner':
      return !same(Math.abs(own.y), farthest);
    case 'front':
      return same(own.x, Math.min(...local.map(({ at }) => at.x)));
    case 'rear':
      return same(own.x, Math.max(...local.map(({ at }) => at.x)));
  }
}
