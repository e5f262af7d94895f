import { name } from '@cribwright/messages';
import { toPlan, toVehicle, type Vehicle, type VehicleContact } from '@cribwright/model';
import { inch, poundForce } from '@cribwright/units';
import type { BoundBlock } from '../bound/bound-file.js';
import { problem } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { vehicleProperties } from '../schema/vehicle.js';
import { outermost } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';
import type { PlacedPart, PlacedVehicles } from './placed-vehicles.js';
import { sideways } from './sideways.js';

/** Of one point where a vehicle rests on a car body: from memory, a round figure; N/m. */
const bodyStiffness = (1000 * poundForce) / inch;

/** Where vehicles rest on vehicles: `bears trailer at rail`, `coupled to tractor`. */
export function contactsOf(
  w: Lowering,
  cast: PlacedVehicles,
  blocks: readonly BoundBlock[],
): readonly VehicleContact[] {
  return blocks.flatMap((block) => {
    const own = cast.vehicle(`vehicle/${block.name ?? ''}`);
    return own ? [...bears(w, cast, block, own), ...couplings(w, cast, block, own)] : [];
  });
}

function bears(
  w: Lowering,
  cast: PlacedVehicles,
  block: BoundBlock,
  lower: Vehicle,
): readonly VehicleContact[] {
  return w.propertiesOf(block, vehicleProperties.bears).flatMap(({ values, line }) => {
    const upper = cast.vehicle(w.idOf(values.upper, outermost));
    const placed = upper && cast.part(w, values.upper, values.part, outermost);
    if (!upper || !placed) {
      w.report(
        notInPlan(line.span, problemMessage('not-in-plan--rests-on', { lower: name(lower.name) })),
        block.uri,
      );
      return [];
    }
    const roof = topOf(lower);
    const back = w.number(values.back, outermost, block.uri, 'length');
    const from = w.number(values.from, outermost, block.uri, 'length');
    const to = w.number(values.to, outermost, block.uri, 'length');
    const offset = w.number(values.offset, outermost, block.uri, 'length');
    const y = values.centerd ? 0 : offset === undefined ? undefined : sideways(values.side?.text, offset);
    const points = pointsOf(placed, lower, roof, { back, from, to, y });
    if (points.length === 0) {
      w.report(
        problem('contact-none', line.span, {
          part: name(placed.part.name),
          upper: name(upper.name),
          lower: name(lower.name),
          example: name(`bears ${upper.name} at ${placed.part.id} near 26 ft, driver side 4 ft`),
        }),
        block.uri,
      );
      return [];
    }
    return [
      {
        id: `contact/${lower.name}-${upper.name}`,
        lower: lower.id,
        ...(roof ? { lowerPart: roof.id } : {}),
        upper: upper.id,
        upperPart: placed.part.id,
        points,
        coupled: false,
        stiffness: bodyStiffness,
        ref: { element: lower.id, property: 'bears' },
      },
    ];
  });
}

/** The highest flat part of the lower vehicle: its roof or bed. */
const topOf = (v: Vehicle) =>
  v.parts
    .filter((p) => p.form === 'patch')
    .reduce<Vehicle['parts'][number] | undefined>(
      (top, p) => (!top || p.height.high > top.height.high ? p : top),
      undefined,
    );

interface Wanted {
  readonly back: number | undefined;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly y: number | undefined;
}

/**
 * Two points along the stretch where the part passes over the lower vehicle, a quarter in from each end; or where the
 * author says that they touch, on the line of the part that passes over it.
 */
function pointsOf(
  { vehicle, part }: PlacedPart,
  lower: Vehicle,
  roof: Vehicle['parts'][number] | undefined,
  wanted: Wanted,
): readonly { readonly x: number; readonly y: number }[] {
  const offsets = part.form === 'rails' || part.form === 'points' ? part.offsets : [0];
  const lines = offsets.flatMap((offset) => {
    const over =
      stretchOver(vehicle, part, offset, lower, roof) ?? stretchOver(vehicle, part, offset, lower, undefined);
    const near =
      wanted.y === undefined || Math.abs(toPlan(vehicle, { x: part.from, y: offset }).y - wanted.y) < 0.3;
    return over && near ? [{ offset, over }] : [];
  });
  const line = lines.sort((a, b) => b.over.high - b.over.low - (a.over.high - a.over.low))[0];
  if (!line) return [];
  const { offset, over } = line;
  const on = (x: number) => toPlan(vehicle, { x: toVehicle(vehicle, { x, y: vehicle.at.y }).x, y: offset });
  if (wanted.back !== undefined) return [on(wanted.back)];
  if (wanted.from !== undefined && wanted.to !== undefined) return [on(wanted.from), on(wanted.to)];
  if (part.form === 'points') return [toPlan(vehicle, { x: part.from, y: offset })];
  const quarter = (over.high - over.low) / 4;
  return [over.low + quarter, over.high - quarter].map((x) => toPlan(vehicle, { x, y: offset }));
}

/** The stretch of a line along the upper vehicle that lies over the lower one's roof, or over all of it. */
function stretchOver(
  upper: Vehicle,
  part: PlacedPart['part'],
  offset: number,
  lower: Vehicle,
  roof: Vehicle['parts'][number] | undefined,
): { readonly low: number; readonly high: number } | undefined {
  const half = roof ? Math.max(...roof.offsets.map(Math.abs), 0.3) : lower.width / 2;
  const [front, rear] = roof ? [roof.from, roof.to] : [0, lower.length];
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const steps = 400;
  for (let i = 0; i <= steps; i++) {
    const x = part.from + ((part.to - part.from) * i) / steps;
    const spot = toPlan(upper, { x, y: offset });
    const own = toVehicle(lower, spot);
    if (own.x >= front && own.x <= rear && Math.abs(own.y) <= half) {
      low = Math.min(low, x);
      high = Math.max(high, x);
    }
  }
  return low <= high ? { low, high } : undefined;
}

function couplings(
  w: Lowering,
  cast: PlacedVehicles,
  block: BoundBlock,
  upper: Vehicle,
): readonly VehicleContact[] {
  const said = w.propertyOf(block, vehicleProperties.coupled);
  const lower = said && cast.vehicle(w.idOf(said.values.to, outermost));
  const pin =
    upper.parts.find((p) => p.id === 'kingpin') ??
    upper.parts.find((p) => p.form === 'points' && p.carries?.down);
  if (!said || !lower || !pin) {
    if (said) w.report(notInPlan(said.line.span, problemMessage('not-in-plan--coupling', {})), block.uri);
    return [];
  }
  return [
    {
      id: `contact/${lower.name}-${upper.name}`,
      lower: lower.id,
      upper: upper.id,
      upperPart: pin.id,
      points: pin.offsets.map((o) => toPlan(upper, { x: pin.from, y: o })),
      coupled: true,
      stiffness: pin.carries?.stiffness ?? bodyStiffness * 20,
      ref: { element: upper.id, property: 'coupled to' },
    },
  ];
}
