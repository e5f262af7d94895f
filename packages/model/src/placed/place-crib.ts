import { add, exactly, hull, type Interval, subtract } from '../plan/interval.js';
import type { Crib, Pad } from '../plan/support.js';
import { type Around, baseOf } from './base.js';
import { type Contact, contactsOf, type Met } from './contacts.js';
import { type Extent, rectangle } from './outline.js';
import {
  baseTimbers,
  type Course,
  contactWidths,
  courseHeight,
  coursesOf,
  heightWithShims,
  timberCount,
} from './stack.js';
import { underside } from './underside.js';

/** A crib with all that follows from its text and its place. Lengths m. */
export interface PlacedCrib {
  /** Of timber as the policy has it dressed. */
  readonly crib: Crib;
  readonly pad: Pad | undefined;
  /** Height over the ground of what it stands on. Unknown where that is not in the plan. */
  readonly base: Interval | undefined;
  readonly courses: readonly Course[];
  /** Pieces in the course that lies on the base, and in all. */
  readonly baseTimbers: number;
  readonly timbers: number;
  /** Of the courses alone, above what it stands on: this is what height limits are for. */
  readonly height: number;
  /** Of courses and shims, above what it stands on. */
  readonly heightWithShims: number;
  /** Up to what it captures, above what it stands on. Unknown where its wedges do not close the gap, or without any. */
  readonly heightWithWedges: Interval | undefined;
  /** Outside to outside of the contacts, each way and the lesser of the two. */
  readonly widths: { readonly lengthwise: number; readonly crosswise: number };
  readonly width: number;
  readonly contacts: readonly Contact[];
  /** Contacts that meet a part. */
  readonly loaded: number;
  /** The first part that it is to capture. */
  readonly captures: Met | undefined;
  /** Height over the ground of the underside of what it captures. */
  readonly captured: Interval | undefined;
  /** From the shims up to there. Below zero where the crib is too high. */
  readonly gap: Interval | undefined;
  readonly extent: Extent;
}

export function placeCrib(crib: Crib, around: Around): PlacedCrib {
  const { height: base, pad } = baseOf(crib, around);
  const contacts = contactsOf(crib, around.vehicles, around.reach);
  const met = contacts.flatMap((c) => c.meets ?? c.given[0] ?? []);
  const heights = met.map((m) => underside(m.vehicle, m.part, m.place.at));
  const captured = heights.length > 0 ? heights.reduce(hull) : undefined;
  const shimmed = heightWithShims(crib);
  const gap = captured && base && subtract(captured, add(base, exactly(shimmed)));
  const widths = contactWidths(crib);
  const closes = crib.wedges?.travel.high;
  return {
    crib,
    pad,
    base,
    courses: coursesOf(crib),
    baseTimbers: baseTimbers(crib),
    timbers: timberCount(crib),
    height: courseHeight(crib),
    heightWithShims: shimmed,
    heightWithWedges:
      gap !== undefined && closes !== undefined && gap.low >= 0 && gap.low <= closes + 1e-6
        ? add(gap, exactly(shimmed))
        : undefined,
    widths,
    width: Math.min(widths.lengthwise, widths.crosswise),
    contacts,
    loaded: contacts.filter((c) => c.loaded).length,
    captures: met[0],
    captured,
    gap,
    // It takes the full length of its timbers both ways.
    extent: {
      element: crib.id,
      outline: rectangle(crib.at, crib.timber.length, crib.timber.length),
      low: base?.low ?? 0,
      high: (base?.high ?? 0) + shimmed,
    },
  };
}
