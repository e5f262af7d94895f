import { type Cargo, type Interval, scale } from '@cribwright/model';
import { STANDARD_GRAVITY } from '@cribwright/units';
import type { BoundBlock } from '../bound/bound-file.js';
import { problemMessage } from '../problems/problem-message.js';
import { cargoTypeProperties } from '../schema/timber.js';
import { cargoLine } from '../schema/vehicle.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';
import { notInPlan } from './not-in-plan.js';

/** What a vehicle carries: as the plan says, else as its type does. */
export function cargoOf(w: Lowering, vehicle: string, chain: readonly BoundBlock[]): readonly Cargo[] {
  // A plan that names its cargo replaces what a type would carry.
  const block = chain.find((b) => b.properties.some((p) => p.schema === cargoLine));
  if (!block) return [];
  return w.propertiesOf(block, cargoLine).flatMap(({ values, line }, index): readonly Cargo[] => {
    const uri = block.uri;
    const type = w.resolve(values.type, at0)?.target;
    const typeBlock = type?.block;
    const ref = { element: vehicle, property: 'cargo' };
    w.placeLine(vehicle, line, uri);
    const byVolume = values.weight
      ? undefined
      : volumeOf(w, w.interval(values.volume, at0, uri, 'volume'), typeBlock);
    const weight = byVolume
      ? timesBoth(byVolume.volume, byVolume.unitWeight)
      : w.interval(values.weight, at0, uri, 'force');
    const from = w.number(values.from, at0, uri, 'length');
    const to = w.number(values.to, at0, uri, 'length');
    if (!weight || from === undefined || to === undefined) {
      w.report(notInPlan(line.span, problemMessage('not-in-plan--cargo', {})), uri);
      return [];
    }
    const center = w.interval(values.center, at0, uri, 'length');
    const offset = w.interval(values.offset, at0, uri, 'length');
    const side = values.offsetSide?.text;
    const shifts =
      values.shifts === true ||
      (typeBlock !== undefined && w.propertyOf(typeBlock, cargoTypeProperties.shifts) !== undefined);
    return [
      {
        id: `${vehicle}/cargo ${index + 1}`,
        name: values.label?.text ?? type?.block?.title ?? type?.name ?? 'cargo',
        weight,
        from: Math.min(from, to),
        to: Math.max(from, to),
        ...(center ? { center } : {}),
        offset: offset ? mirrored(offset, side) : { low: 0, high: 0 },
        height: w.interval(values.height, at0, uri, 'length'),
        shifts,
        ...(byVolume ? { byVolume } : {}),
        ref,
      },
    ];
  });
}

const mirrored = (i: Interval, side: string | undefined): Interval =>
  side === 'driver side' ? { low: -i.high, high: -i.low } : i;

/** How much there is of it, and what that weighs. */
function volumeOf(
  w: Lowering,
  volume: Interval | undefined,
  type: BoundBlock | undefined,
): Cargo['byVolume'] | undefined {
  const said = type && w.propertyOf(type, cargoTypeProperties.density);
  const density = w.density(said?.values.density, at0, said?.block.uri ?? '');
  if (!volume || !said || !density) return undefined;
  return {
    volume,
    unitWeight: scale(density, STANDARD_GRAVITY),
    source: w.source(said.values, [said.block]),
  };
}

/** Both above zero. */
const timesBoth = (a: Interval, b: Interval): Interval => ({ low: a.low * b.low, high: a.high * b.high });
