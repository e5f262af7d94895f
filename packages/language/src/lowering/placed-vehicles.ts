import {
  crossmemberPlaces,
  type Interval,
  type Part,
  type PlacedVehicle,
  placeVehicle,
  toPlan,
  undersideAlong,
  type Vehicle,
} from '@cribwright/model';
import { vectorOf } from '@cribwright/units';
import type { Reference } from '../bound/bound-file.js';
import type { Amount } from '../phrase/evaluate.js';
import type { Expression } from '../phrase/expression.js';
import { type Expansion, outermost } from './expansion.js';
import type { Lowering } from './lowering.js';

/** A part of a vehicle that is in the plan. */
export interface PlacedPart {
  readonly vehicle: Vehicle;
  readonly part: Part;
}

/** The vehicles of a plan, for whatever asks where their parts are. */
export class PlacedVehicles {
  readonly vehicles: readonly Vehicle[];
  private readonly placed: readonly PlacedVehicle[];

  /** Parts are looked for where they are as the vehicle lies. */
  constructor(vehicles: readonly Vehicle[]) {
    this.placed = vehicles.map(placeVehicle);
    this.vehicles = this.placed.map((p) => p.vehicle);
  }

  get main(): Vehicle | undefined {
    return this.vehicles[0];
  }

  vehicle(id: string | undefined): Vehicle | undefined {
    return this.vehicles.find((v) => v.id === id);
  }

  /** The highest point of a vehicle as it lies. */
  top(vehicle: Vehicle): Interval | undefined {
    return this.placed.find((p) => p.vehicle === vehicle)?.top;
  }

  /** The part that words mean: of the vehicle said, or of the main one, or of the only other one that has it. */
  part(
    w: Lowering,
    vehicle: Reference | undefined,
    part: Reference | undefined,
    within: Expansion,
  ): PlacedPart | undefined {
    if (!part) return undefined;
    if (part.target?.kind === 'parameter') {
      const value = within.given.get(part.target.name)?.value;
      if (value?.kind !== 'reference') return undefined;
      const outer = within.outer ?? outermost;
      return value.part
        ? this.part(w, value.reference, value.part, outer)
        : this.part(w, vehicle, value.reference, outer);
    }
    const id = vehicle && w.idOf(vehicle, within);
    const wanted = part.target?.name ?? part.text;
    const among = id ? this.vehicles.filter((v) => v.id === id) : this.vehicles;
    for (const v of among) {
      const found = v.parts.find((p) => p.id === wanted || p.id === `${wanted}s` || `${p.id}s` === wanted);
      if (found) return { vehicle: v, part: found };
    }
    return undefined;
  }
}

/** Where across the plan a part runs on one side, at a place along it. */
export function acrossOf({ vehicle, part }: PlacedPart, side: string | undefined): number {
  const ends = part.offsets.map((o) => toPlan(vehicle, { x: part.from, y: o }).y);
  if (side === 'driver side') return Math.min(...ends);
  if (side === 'passenger side') return Math.max(...ends);
  return ends.length === 1 ? (ends[0] ?? 0) : ends.reduce((a, b) => a + b, 0) / Math.max(1, ends.length);
}

/** The place along the vehicle of the numbered crossmember, counted from 1 at its front. */
export const memberAt = ({ vehicle, part }: PlacedPart, number: number): number | undefined => {
  const x = part.spacing ? crossmemberPlaces(part)[number - 1] : undefined;
  return x === undefined ? undefined : toPlan(vehicle, { x, y: 0 }).x;
};

const length = (i: Interval): Amount => ({ ...i, vector: vectorOf('length') });
const one = (n: number): Amount => ({ low: n, high: n, vector: vectorOf('length') });

/** What calculations may ask of a vehicle or a part: `trailer rail height`. */
export function figureOf(
  w: Lowering,
  cast: PlacedVehicles,
  e: Extract<Expression, { kind: 'figure' }>,
): Amount | undefined {
  const vehicle = cast.vehicle(w.idOf(e.subject, outermost));
  if (!vehicle) return undefined;
  if (e.part) {
    const found = cast.part(w, e.subject, e.part, outermost)?.part;
    if (!found) return undefined;
    if (e.figure === 'height') return length(undersideAlong(vehicle, found));
    if (e.figure === 'width' || e.figure === 'depth' || e.figure === 'from' || e.figure === 'to')
      return one(found[e.figure]);
    return e.figure === 'length' ? one(found.to - found.from) : undefined;
  }
  if (e.figure === 'length' || e.figure === 'width') return one(vehicle[e.figure]);
  const top = e.figure === 'height' ? cast.top(vehicle) : undefined;
  if (top) return length(top);
  return undefined;
}
