import { name } from '@cribwright/messages';
import { toPlan, type Vehicle } from '@cribwright/model';
import type { BoundBlock, Reference } from '../bound/bound-file.js';
import type { Of } from '../bound/shape.js';
import { problem } from '../problems/problem.js';
import { cribProperties } from '../schema/crib.js';
import type { along } from '../schema/phrases.js';
import { anchorProperties, strutProperties } from '../schema/strut.js';
import type { LoweringContext } from './lowering-context.js';
import { memberAt } from './placed-vehicles.js';

type Loose<T> = { readonly [K in keyof T]?: T[K] | undefined };
export type AlongValues = Loose<Of<typeof along>>;

/**
 * The place along the plan that a crew measured: back from the front of the main vehicle, forward from its rear, or
 * ahead of and behind an axle, a single point of a vehicle, or another support. Ahead is toward the front: of the
 * vehicle that an axle belongs to, of the main vehicle otherwise.
 *
 * @param own the vehicle that an axle or part is of where none is said: of a strut the one its head is on
 * @param seen supports whose places are being looked for, so that two that hang on each other end
 */
export function alongOf(
  m: LoweringContext,
  v: AlongValues | undefined,
  uri: string,
  own: Vehicle | undefined = m.placedVehicles.main,
  seen: readonly BoundBlock[] = [],
): number | undefined {
  const { w, placedVehicles: cast, within } = m;
  const far = w.number(v?.back, within, uri, 'length');
  if (v === undefined || far === undefined) return undefined;
  if (v.fromEnd?.text === 'from the rear') {
    const { main } = cast;
    return main && toPlan(main, { x: main.length - far, y: 0 }).x;
  }
  if (v.way === undefined || v.datum === undefined) return far;
  const back = v.way.text === 'behind' ? far : -far;
  const { vehicle: said, axle, part, beside } = v.datum;
  if (beside) {
    const from = besideOf(m, beside, uri, seen);
    return from === undefined ? undefined : from + back;
  }
  const vehicle = said ? cast.vehicle(w.idOf(said, within)) : own;
  const from = vehicle && pointOf(m, vehicle, said, axle, part);
  const span = (axle ?? part ?? said)?.span;
  if (vehicle === undefined || from === undefined) {
    if (span)
      w.report(
        problem('value-unknown--no-point', span, { text: name((axle ?? part)?.text ?? '') }),
        uri,
        within,
      );
    return undefined;
  }
  // Across the plan, ahead of an axle would be to one side.
  if (Math.abs(Math.sin(vehicle.heading)) > 1e-6) {
    if (span) w.report(problem('value-unknown--turned', span, { vehicle: name(vehicle.name) }), uri, within);
    return undefined;
  }
  return toPlan(vehicle, { x: from + back, y: 0 }).x;
}

/** An axle, or a part that is a single point along its vehicle: a kingpin, the legs of a landing gear. */
function pointOf(
  m: LoweringContext,
  vehicle: Vehicle,
  said: Reference | undefined,
  axle: Reference | undefined,
  part: Reference | undefined,
): number | undefined {
  if (axle) return vehicle.axles.find((a) => a.name === `axle ${axle.text}` || a.id === axle.text)?.x;
  const found = m.placedVehicles.part(m.w, said, part, m.within);
  return found?.vehicle === vehicle && found.part.form === 'points' ? found.part.from : undefined;
}

function besideOf(
  m: LoweringContext,
  beside: Reference,
  uri: string,
  seen: readonly BoundBlock[],
): number | undefined {
  const { w, within } = m;
  const block = w.resolve(beside, within)?.target.block;
  // A support of a pattern is at another place for each use.
  const known = block !== undefined && !beside.text.includes('.');
  if (block !== undefined && seen.includes(block))
    w.report(problem('value-unknown--circle', beside.span, { text: name(beside.text) }), uri, within);
  else if (!known && beside.target)
    w.report(problem('value-unknown--no-point', beside.span, { text: name(beside.text) }), uri, within);
  return block === undefined || !known || seen.includes(block) ? undefined : xOf(m, block, [...seen, block]);
}

/** Where a crib, step chock, strut head or anchor is along the plan. */
function xOf(m: LoweringContext, block: BoundBlock, seen: readonly BoundBlock[]): number | undefined {
  const { w, placedVehicles: cast, within } = m;
  const { uri } = block;
  switch (block.schema.keyword) {
    case 'strut': {
      const v = w.propertyOf(block, strutProperties.head)?.values;
      return alongOf(m, v, uri, cast.part(w, v?.vehicle, v?.part, within)?.vehicle, seen);
    }
    case 'anchor':
      return alongOf(m, w.propertyOf(block, anchorProperties.at)?.values, uri, cast.main, seen);
    default: {
      const v = w.propertyOf(block, cribProperties.at)?.values;
      if (v?.member === undefined) return alongOf(m, v, uri, cast.main, seen);
      const part = cast.part(w, undefined, v.member, within);
      const number = w.number(v.memberNumber, within, uri);
      return part && number !== undefined ? memberAt(part, number) : undefined;
    }
  }
}
