import { type Message, message, quantity } from '@cribwright/messages';
import type { BodyCorner, PlanBody } from '../supports/plan-bodies.js';
import type { JointCorner } from './components.js';

/**
 * A place in the ranges of a component: for each of its bodies, how much each corner of its ranges counts, in shares
 * that add up to 1. Weights and moments are mixed, so that every place lies inside the ranges. A cab is mixed as its
 * vehicle is.
 */
export type RangePlace = readonly (readonly number[])[];

export const cornerPlace = (corner: JointCorner, bodies: readonly PlanBody[]): RangePlace =>
  bodies.map(({ corners }, b) => corners.map((_, c) => (c === (corner[b] ?? 0) ? 1 : 0)));

/** One range of one vehicle. A body's corners count through its ranges like digits: this is one of the digits. */
export interface RangeAxis {
  readonly vehicle: string;
  readonly digit: number;
}

export const axesOf = (bodies: readonly PlanBody[]): readonly RangeAxis[] =>
  [...new Set(bodies.map((b) => b.vehicle))].flatMap((vehicle) => {
    // Tool loads are off or on.
    const corners = bodies.find((b) => b.vehicle === vehicle)?.corners ?? [];
    const count = corners.filter((c) => c.working !== true).length;
    const axes: RangeAxis[] = [];
    for (let digit = 1; digit < count; digit *= 2) axes.push({ vehicle, digit });
    return axes;
  });

/** The place with one range at its low or its high end, and the others as they are. */
export const atEnd = (
  place: RangePlace,
  { vehicle, digit }: RangeAxis,
  end: 'low' | 'high',
  bodies: readonly PlanBody[],
): RangePlace =>
  place.map((shares, b) => {
    if (bodies[b]?.vehicle !== vehicle) return shares;
    const moved = shares.map(() => 0);
    shares.forEach((share, c) => {
      const to = end === 'low' ? c & ~digit : c | digit;
      const there = to < moved.length ? to : c;
      moved[there] = (moved[there] ?? 0) + share;
    });
    return moved;
  });

/** The place on the way from one to another. */
export const mixed = (from: RangePlace, to: RangePlace, share: number): RangePlace =>
  from.map((shares, i) => shares.map((s, c) => s + share * ((to[i]?.[c] ?? s) - s)));

/** How far apart two places on a line along one range are, as a share of it. */
export const wayTo = (a: RangePlace, b: RangePlace): number =>
  Math.max(
    0,
    ...a.map((shares, i) => shares.reduce((sum, s, c) => sum + Math.abs(s - (b[i]?.[c] ?? s)) / 2, 0)),
  );

/** The same place with tool loads off: a body's corners with them follow those without, in the same order. */
export function beforeWork(place: RangePlace, bodies: readonly PlanBody[]): RangePlace {
  if (
    !bodies.some(({ corners }, b) => corners.some((c, i) => c.working === true && (place[b]?.[i] ?? 0) > 0))
  )
    return place;
  return place.map((shares, b) => {
    const corners = bodies[b]?.corners ?? [];
    const count = corners.filter((c) => c.working !== true).length;
    return shares.map((share, i) => (i < count ? share + (shares[i + count] ?? 0) : 0));
  });
}

export const placeKey = (place: RangePlace): string => place.map((shares) => shares.join()).join(';');

/** A body at a place: weights mixed, and centers by the moments. */
export function bodyAt(
  corners: readonly BodyCorner[],
  shares: readonly number[] | undefined,
): { readonly weight: number; readonly x: number; readonly y: number } {
  const only = corners.find((_, c) => shares?.[c] === 1);
  if (only !== undefined) return only;
  let [weight, x, y] = [0, 0, 0];
  corners.forEach((corner, c) => {
    const part = (shares?.[c] ?? 0) * corner.weight;
    weight += part;
    x += part * corner.x;
    y += part * corner.y;
  });
  return { weight, x: x / weight, y: y / weight };
}

/** `heaviest`, `58 % of the way between center farthest to its front and center farthest to its rear`. */
export function placeWords({ corners }: PlanBody, shares: readonly number[] | undefined): readonly Message[] {
  const counted = corners.flatMap((corner, c) => {
    const share = shares?.[c] ?? 0;
    return share > 0 ? [{ share, words: corner.words }] : [];
  });
  return (counted[0]?.words ?? []).map((first, i) => {
    const other = counted.find(({ words }) => words[i]?.id !== first.id)?.words[i];
    if (other === undefined) return first;
    const share = counted.reduce((sum, p) => sum + (p.words[i]?.id === first.id ? 0 : p.share), 0);
    return message('range.between', { share: quantity('share', share, 'nearest'), first, other });
  });
}
