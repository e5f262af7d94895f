import { inch } from '@cribwright/units';

/**
 * What each axle would carry on the road, from what the plan says of empty loads and cargo.
 *
 * Assumes: the truck stands level on its own wheels, coupled as on the road; cargo bears on two groups of
 * carriers (steer and drive, kingpin and tandem) by the lever rule, and evenly within a group. It is a check of
 * what was typed, so the crash itself does not matter here.
 */

import type { SourceNote } from '@cribwright/messages';
import type { ElementId, Part, Plan, Ref, Vehicle, VehicleContact } from '@cribwright/model';
import { add, exactly, type Interval, toVehicle } from '@cribwright/model';
import { sourceOfPart } from '@cribwright/model/internal';
import { cargoCenter } from '../mass/body-mass.js';

/** An axle, or a kingpin that hands its load to the vehicle in front. Vehicle axes, N. */
export interface Carrier {
  readonly vehicle: ElementId;
  readonly name: string;
  readonly at: number;
  readonly empty: Interval;
  /** Where what it carries empty comes from. */
  readonly source: SourceNote;
  /** What it carries of each cargo at its heaviest, with the cargo's center at its foremost and rearmost. */
  readonly shares: readonly Share[];
  readonly axle: boolean;
  readonly ref: Ref;
}

interface Share {
  readonly cargo: string;
  /** The line that the cargo stands on. Undefined for what a trailer's own weight puts on its tractor. */
  readonly ref: Ref | undefined;
  readonly foremost: number;
  readonly rearmost: number;
}

/** What a run of carriers bears together, over all places that the cargo may have: empty and cargo at the heaviest. */
export function groupLoad(carriers: readonly Carrier[]): Interval {
  const empty = carriers.reduce((sum, c) => sum + c.empty.high, 0);
  const shares = carriers.flatMap((c) => c.shares);
  return [...new Set(shares.map((s) => s.cargo))]
    .map((cargo) => shares.filter((s) => s.cargo === cargo))
    .map((own) => {
      const ends = [own.reduce((sum, s) => sum + s.foremost, 0), own.reduce((sum, s) => sum + s.rearmost, 0)];
      return { low: Math.min(...ends), high: Math.max(...ends) };
    })
    .reduce(add, exactly(empty));
}

/** The cargo that puts most on a run of carriers, where their empty loads alone are within `limit`; else an axle. */
export function blameFor(carriers: readonly Carrier[], limit: number): Ref | undefined {
  const empty = carriers.reduce((sum, c) => sum + c.empty.high, 0);
  const shares = carriers.flatMap((c) => c.shares).filter((s) => s.ref !== undefined);
  const heaviest = shares.reduce<Share | undefined>(
    (most, s) => (most === undefined || least(s) > least(most) ? s : most),
    undefined,
  );
  return empty > limit || heaviest === undefined ? carriers[0]?.ref : heaviest.ref;
}

const least = (s: Share): number => Math.min(s.foremost, s.rearmost);

/** Something that weighs on a vehicle: its weight times its place along it, at both ends of where it may be. */
interface Burden {
  readonly cargo: string;
  readonly ref: Ref | undefined;
  readonly foremost: { readonly weight: number; readonly at: number };
  readonly rearmost: { readonly weight: number; readonly at: number };
}

/** Carriers closer than this belong to one group: a tandem, a tridem. 96 in, as in 23 CFR 658.17. */
const GROUP = 96 * inch;

/** A vehicle's carriers with cargo, and with what rests on its fifth wheel. `undefined` where they cannot be told. */
function loadedCarriers(vehicle: Vehicle, extra: readonly Burden[] = []): readonly Carrier[] | undefined {
  const empty = emptyCarriers(vehicle);
  const burdens = [...vehicle.cargo.map((c) => cargoBurden(vehicle.id, c)), ...extra];
  if (burdens.length === 0) return empty;
  const groups = grouped(empty);
  const [front, rear, ...more] = groups;
  if (front === undefined || rear === undefined || more.length > 0) return undefined;
  const span = middle(rear) - middle(front);
  return groups.flatMap((group) => {
    const part = ({ weight, at }: Burden['foremost']) => {
      const lever = (at - middle(front)) / span;
      return (weight * (group === rear ? lever : 1 - lever)) / group.length;
    };
    return group.map((carrier) => ({
      ...carrier,
      shares: burdens.map((b) => ({
        cargo: b.cargo,
        ref: b.ref,
        foremost: part(b.foremost),
        rearmost: part(b.rearmost),
      })),
    }));
  });
}

/**
 * The combination that a vehicle leads, axles front to rear, places along it as if it stood straight: each trailer
 * counts from its kingpin. `undefined` where a load cannot be told.
 */
export function combination(lead: Vehicle, plan: Plan): readonly Carrier[] | undefined {
  const coupling = plan.contacts.find((c) => c.coupled && c.lower === lead.id);
  const trailer = plan.vehicles.find((v) => v.id === coupling?.upper);
  if (coupling === undefined || trailer === undefined) return loadedCarriers(lead);
  const behind = combination(trailer, plan);
  const pin = trailer.parts.find((p) => p.id === coupling.upperPart);
  const carried = behind?.find((c) => !c.axle && c.vehicle === trailer.id);
  const fifthWheel = fifthWheelAt(lead, coupling);
  if (behind === undefined || pin === undefined || carried === undefined || fifthWheel === undefined)
    return undefined;
  const onFifthWheel = carried.shares.map((s) => ({
    cargo: s.cargo,
    ref: s.ref,
    foremost: { weight: s.foremost, at: fifthWheel },
    rearmost: { weight: s.rearmost, at: fifthWheel },
  }));
  const pinEmpty = { weight: carried.empty.high, at: fifthWheel };
  const own = loadedCarriers(lead, [
    ...onFifthWheel,
    { cargo: `${trailer.id}, empty`, ref: undefined, foremost: pinEmpty, rearmost: pinEmpty },
  ]);
  const shift = fifthWheel - pin.from;
  const rest = behind.filter((c) => c !== carried).map((c) => ({ ...c, at: c.at + shift }));
  return own === undefined ? undefined : [...own, ...rest].sort((a, b) => a.at - b.at);
}

/** Vehicles that nothing pulls: each leads a combination, if only of itself. */
export const leads = ({ vehicles, contacts }: Plan): readonly Vehicle[] =>
  vehicles.filter((v) => !contacts.some((c) => c.coupled && c.upper === v.id));

const cargoBurden = (vehicle: ElementId, cargo: Vehicle['cargo'][number]): Burden => {
  const center = cargoCenter(cargo);
  return {
    cargo: `${vehicle}/${cargo.id}`,
    ref: cargo.ref,
    foremost: { weight: cargo.weight.high, at: center.low },
    rearmost: { weight: cargo.weight.high, at: center.high },
  };
};

/** Axles, and the parts that hold the vehicle up, as they stand empty. */
export function emptyCarriers(vehicle: Vehicle): readonly Carrier[] {
  const axles = vehicle.axles.map((a) => ({
    vehicle: vehicle.id,
    name: a.name,
    at: a.x,
    empty: a.emptyLoad,
    source: a.emptyLoadSource ?? vehicle.source,
    shares: [],
    axle: true,
    ref: a.ref,
  }));
  const parts = vehicle.parts.flatMap((p: Part) =>
    p.carries?.emptyLoad === undefined
      ? []
      : [
          {
            vehicle: vehicle.id,
            name: p.name,
            at: (p.from + p.to) / 2,
            empty: p.carries.emptyLoad,
            source: sourceOfPart({ part: p, vehicle }, 'carries'),
            shares: [],
            axle: false,
            ref: p.ref,
          },
        ],
  );
  return [...axles, ...parts].sort((a, b) => a.at - b.at);
}

function grouped(carriers: readonly Carrier[]): readonly (readonly Carrier[])[] {
  const groups: Carrier[][] = [];
  for (const carrier of carriers) {
    const last = groups.at(-1);
    const near = last?.[0];
    if (
      last === undefined ||
      near === undefined ||
      near.axle !== carrier.axle ||
      carrier.at - near.at > GROUP
    )
      groups.push([carrier]);
    else last.push(carrier);
  }
  return groups;
}

const middle = (group: readonly Carrier[]): number =>
  group.reduce((sum, c) => sum + c.at, 0) / Math.max(1, group.length);

function fifthWheelAt(lead: Vehicle, { points }: VehicleContact): number | undefined {
  if (points.length === 0) return undefined;
  return points.reduce((sum, p) => sum + toVehicle(lead, p).x, 0) / points.length;
}
