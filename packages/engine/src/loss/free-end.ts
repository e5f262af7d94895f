import { type Message, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { toPlan } from '@cribwright/model';
import { insideBy, supportPolygon } from '../resting/support-polygon.js';
import type { Motion } from '../resting/system.js';
import type { PlanBody } from '../supports/plan-bodies.js';
import type { Component, JointCorner } from './components.js';

/** What falls: a body, and the end of it that nothing holds. */
export interface FreeEnd {
  readonly body: PlanBody;
  /** `the front`, `the driver side`, `the rear corner on the driver side`. */
  readonly end: Message;
}

/**
 * Which end of which body falls. Several may move together: the one named is the one whose own supports do not
 * reach round its center of gravity, else the lowest, else the one whose weight drives the fall.
 *
 * @param there which of the component's points are left.
 */
export function freeEnd(
  motions: readonly Motion[],
  { bodies, points }: Component,
  corner: JointCorner,
  there: readonly boolean[],
  vehicles: ReadonlyMap<string, Vehicle>,
): FreeEnd | undefined {
  const moving = new Set(motions.map((m) => m.body));
  const falling = motions.flatMap((motion) => {
    const index = bodies.findIndex((b) => b.id === motion.body);
    const body = bodies[index];
    const center = body?.corners[corner[index] ?? 0];
    if (body === undefined || center === undefined) return [];
    const own = points
      .filter((p, i) => there[i] === true && p.upper === body.id && p.lower !== body.id)
      .map((p) => p.at);
    return [
      {
        motion,
        body,
        carried: points.some((p, i) => there[i] === true && p.upper === body.id && moving.has(p.lower)),
        held: insideBy(supportPolygon(own), center) >= 0,
        work: center.weight * sinkingAt(motion, center),
      },
    ];
  });
  const [first] = falling.sort(
    (a, b) => Number(a.held) - Number(b.held) || Number(a.carried) - Number(b.carried) || b.work - a.work,
  );
  const vehicle = first === undefined ? undefined : vehicles.get(first.body.vehicle);
  return first === undefined || vehicle === undefined
    ? undefined
    : { body: first.body, end: endOf(vehicle, first.body, first.motion) };
}

const sinkingAt = (m: Motion, p: { readonly x: number; readonly y: number }): number =>
  m.sinking + m.alongX * p.x + m.alongY * p.y;

function endOf(vehicle: Vehicle, body: PlanBody, m: Motion): Message {
  const cab = body.id === vehicle.id ? undefined : vehicle.cab;
  const [from, to] = [cab?.from ?? 0, cab?.to ?? vehicle.length];
  const half = vehicle.width / 2;
  const sinks = (x: number, y: number) => sinkingAt(m, toPlan(vehicle, { x, y }));
  const middle = sinks((from + to) / 2, 0);
  const lengthwise = sinks(to, 0) - middle;
  const crosswise = sinks((from + to) / 2, half) - middle;
  const end = lengthwise < 0 ? 'front' : 'rear';
  const side = crosswise < 0 ? 'driver' : 'passenger';
  const [along, across] = [Math.abs(lengthwise), Math.abs(crosswise)];
  if (Math.max(along, across) < 1e-6 * Math.abs(middle)) return term('loss.whole');
  if (along > 2 * across) return term(`loss.${end}`);
  return across > 2 * along ? term(`loss.${side}-side`) : term(`loss.${end}-corner-${side}`);
}
