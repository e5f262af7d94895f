import { add, exactly, type Interval, type Vehicle, type VehiclePosition } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import { vehicleProperties } from '../schema/vehicle.js';
import { outermost as at0 } from './expansion.js';
import type { Lowering } from './lowering.js';

/** Which way a vehicle points: an angle turns its front toward the driver side of the main vehicle. */
export function headingOf(w: Lowering, block: BoundBlock): number {
  const said = w.propertyOf(block, vehicleProperties.heading);
  if (!said) return 0;
  const { opposite, acrossDriver, acrossPassenger, angle } = said.values;
  if (opposite) return Math.PI;
  // Its front toward the driver side: its own length runs back toward the passenger side.
  if (acrossDriver) return Math.PI / 2;
  if (acrossPassenger) return -Math.PI / 2;
  return w.number(angle, at0, block.uri, 'angle') ?? 0;
}

/** How it lies. */
export function positionOf(w: Lowering, block: BoundBlock): VehiclePosition {
  const said = w.propertyOf(block, vehicleProperties.position);
  if (!said) return { kind: 'upright' };
  const { angle, nose, side, roof } = said.values;
  if (roof) return { kind: 'on its roof' };
  if (side) return { kind: 'on its side', side: side.text === 'driver side' ? 'driver' : 'passenger' };
  const pitch = w.number(angle, at0, block.uri, 'angle');
  if (pitch !== undefined) return { kind: 'pitched', angle: nose?.text === 'nose up' ? -pitch : pitch };
  return { kind: 'upright' };
}

/**
 * A vehicle with axles on a dock. On the dock with all of them, everything of it is as much higher. With some, it tilts:
 * about its rearmost axle where that is on the ground, and with its nose down where the rear is on the dock.
 */
export function onDock(w: Lowering, block: BoundBlock, vehicle: Vehicle): Vehicle {
  const said = w.propertyOf(block, vehicleProperties.rests);
  const height = w.number(said?.values.dockHeight, at0, block.uri, 'length');
  const from = w.number(said?.values.from, at0, block.uri, 'length');
  const to = w.number(said?.values.to, at0, block.uri, 'length');
  if (height === undefined || from === undefined || to === undefined || vehicle.position.kind !== 'upright')
    return vehicle;
  const places = [
    ...vehicle.axles.map((a) => a.x),
    ...vehicle.parts.filter((p) => p.carries?.down).map((p) => p.from),
  ];
  const up = places.filter((x) => x >= from && x <= to);
  const down = places.filter((x) => x < from || x > to);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  if (up.length === 0 || places.length === 0) return vehicle;
  if (down.length === 0) return raised(vehicle, height);
  const angle = Math.asin(Math.min(1, height / Math.max(last - first, height)));
  const rearUp = up.includes(last);
  const position: VehiclePosition = { kind: 'pitched', angle: rearUp ? angle : -angle };
  return { ...(rearUp ? raised(vehicle, height) : vehicle), position };
}

const raised = (v: Vehicle, by: number): Vehicle => {
  const up = (i: Interval): Interval => add(i, exactly(by));
  const { cab, statedCenter, emptyCenterHeight } = v;
  return {
    ...v,
    height: v.height + by,
    parts: v.parts.map((p) => ({ ...p, height: up(p.height) })),
    cargo: v.cargo.map((c) => ({ ...c, height: c.height && up(c.height) })),
    emptyCenterHeight: emptyCenterHeight && up(emptyCenterHeight),
    ...(statedCenter ? { statedCenter: { ...statedCenter, z: up(statedCenter.z) } } : {}),
    ...(cab ? { cab: { ...cab, center: { ...cab.center, z: up(cab.center.z) } } } : {}),
  };
};
