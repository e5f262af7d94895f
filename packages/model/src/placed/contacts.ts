import type { ElementId } from '../plan/ref.js';
import type { Capture, Crib } from '../plan/support.js';
import type { Part, Vehicle } from '../plan/vehicle.js';
import { toVehicle } from './frame.js';
import { type PartPlace, partNamed, placeAt } from './part-place.js';
import { type Crossing, crossings } from './stack.js';

/** A crossing and what it meets above. */
export interface Contact extends Crossing {
  /** What the plan gives it to meet, whether it does or not. Empty where the plan gives it nothing. */
  readonly given: readonly Met[];
  /** The one it does meet. */
  readonly meets: Met | undefined;
  readonly loaded: boolean;
}

/** A part that a contact of a crib was given to meet, and whether it does. */
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
  const captures = crib.captures.flatMap((capture) => {
    const vehicle = vehicles.get(capture.vehicle);
    const part = vehicle === undefined ? undefined : partNamed(vehicle, capture.part);
    return vehicle === undefined || part === undefined
      ? []
      : [{ capture, vehicle, part, takes: taken(capture, all, vehicle) }];
  });
  return all.map((crossing, i) => {
    const given = captures.flatMap(({ capture, vehicle, part, takes }) => {
      const place = takes[i] === true ? placeAt(vehicle, part, crossing) : undefined;
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

/** For each contact, whether the plan gives it to a capture. */
function taken({ contacts }: Capture, all: readonly Crossing[], vehicle: Vehicle): readonly boolean[] {
  const local = all.map((c) => toVehicle(vehicle, c));
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const along = local.map(({ x }) => x);
  const across = local.map(({ y }) => Math.abs(y));
  switch (contacts ?? 'all') {
    case 'all':
      return all.map(() => true);
    case 'outer':
      return across.map((y) => same(y, Math.max(...across)));
    case 'inner':
      return across.map((y) => !same(y, Math.max(...across)));
    case 'front':
      return along.map((x) => same(x, Math.min(...along)));
    case 'rear':
      return along.map((x) => same(x, Math.max(...along)));
  }
}
