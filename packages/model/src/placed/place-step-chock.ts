import { inch } from '@cribwright/units';
import { add, exactly, type Interval, subtract } from '../plan/interval.js';
import type { StepChock } from '../plan/support.js';
import { type Around, baseOf } from './base.js';
import type { Met } from './contacts.js';
import { type Extent, rectangle } from './outline.js';
import { partNamed, placeAt } from './part-place.js';
import { underside } from './underside.js';

/** A step chock is about 24 in long and 6 in wide. From memory. */
export const stepChockSize = { length: 24 * inch, width: 6 * inch } as const;

/** A step chock with all that follows from its text and its place. Lengths m. */
export interface PlacedStepChock {
  readonly chock: StepChock;
  /** Height over the ground of what it stands on. Unknown where that is not in the plan. */
  readonly base: Interval | undefined;
  /** What it is to capture: what it does meet, else the first that it was given. */
  readonly captures: Met | undefined;
  /** Height over the ground of the underside of what it captures. */
  readonly captured: Interval | undefined;
  /** Of the highest step that goes under, above what it stands on. Unknown where none does. */
  readonly height: number | undefined;
  /** Between that step and what it captures. */
  readonly gap: Interval | undefined;
  readonly extent: Extent;
}

export function placeStepChock(chock: StepChock, around: Around): PlacedStepChock {
  const found = chock.captures.flatMap((capture): readonly Met[] => {
    const vehicle = around.vehicles.get(capture.vehicle);
    const part = vehicle && partNamed(vehicle, capture.part);
    const place = vehicle && part && placeAt(vehicle, part, chock.at);
    if (vehicle === undefined || part === undefined || place === undefined) return [];
    const hit = Math.hypot(place.off.x, place.off.y) <= around.reach + 1e-9;
    return [{ capture, vehicle, part, place, hit }];
  });
  const captures = found.find((f) => f.hit) ?? found[0];
  const captured = captures && underside(captures.vehicle, captures.part, captures.place.at);
  const base = baseOf(chock, around).height;
  const room = captured && base && subtract(captured, base);
  const height = room && chock.heights.filter((h) => h <= room.low + 1e-9).sort((a, b) => b - a)[0];
  return {
    chock,
    base,
    captures,
    captured,
    height,
    gap: room === undefined || height === undefined ? undefined : subtract(room, exactly(height)),
    extent: {
      element: chock.id,
      outline: rectangle(chock.at, stepChockSize.length, stepChockSize.width),
      low: base?.low ?? 0,
      high: add(base ?? exactly(0), exactly(Math.max(0, ...chock.heights))).high,
    },
  };
}
