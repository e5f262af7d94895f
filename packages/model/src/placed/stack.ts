import type { Crib } from '../plan/support.js';

/** One crossing of the top two courses: where the load comes in. Plan axes. */
export interface Crossing {
  /** From 1, front to rear and driver to passenger side. */
  readonly number: number;
  /** m */
  readonly x: number;
  /** m */
  readonly y: number;
  /** Which crosswise timber it lies on from the front: counted from 0. */
  readonly row: number;
  /** Which lengthwise timber it lies on from the driver side: counted from 0. */
  readonly column: number;
}

/** One course of a crib. */
export interface Course {
  /** Counted from 1, the lowest. */
  readonly number: number;
  readonly runs: 'lengthwise' | 'crosswise';
  /** Laid side by side, without gaps. */
  readonly solid: boolean;
  /** Center lines of its timbers, off the crib's center, across the way they run, m. */
  readonly offsets: readonly number[];
  /** Underside above what the crib stands on, m. */
  readonly bottom: number;
}

type Breadth = Pick<Crib, 'timber' | 'overhang' | 'layout'>;

/**
 * Width outside to outside of the contacts along each direction, m: the timber less its two overhangs; one timber
 * alone is as wide as it is.
 */
export const contactWidths = ({ timber, overhang, layout }: Breadth) => {
  const between = timber.length - 2 * overhang;
  return {
    lengthwise: layout.crosswise > 1 ? between : timber.width,
    crosswise: layout.lengthwise > 1 ? between : timber.width,
  };
};

/** The lesser of the two widths, m: the way in which the crib sways. */
export const narrowWidth = (crib: Breadth): number => {
  const { lengthwise, crosswise } = contactWidths(crib);
  return Math.min(lengthwise, crosswise);
};

/** Center lines of some timbers of one width, evenly spread over a width outside to outside, m. */
const spread = (count: number, width: number, timber: number): readonly number[] =>
  count <= 1
    ? [0]
    : Array.from({ length: count }, (_, i) => -(width - timber) / 2 + (i * (width - timber)) / (count - 1));

/** Every crossing of a crib, evenly spread between the outer ones. */
export function crossings(crib: Crib): readonly Crossing[] {
  const widths = contactWidths(crib);
  const xs = spread(crib.layout.crosswise, widths.lengthwise, crib.timber.width);
  const ys = spread(crib.layout.lengthwise, widths.crosswise, crib.timber.width);
  return xs.flatMap((x, row) =>
    ys.map((y, column) => ({
      number: row * ys.length + column + 1,
      x: crib.at.x + x,
      y: crib.at.y + y,
      row,
      column,
    })),
  );
}

/** Height of some courses, m. Shims and wedges come on top of it. */
export const courseHeight = ({ courses, timber }: Pick<Crib, 'courses' | 'timber'>): number =>
  courses * timber.depth;

/** Height of the courses with the shims on them, m. Wedges come on top of it. */
export const heightWithShims = (crib: Pick<Crib, 'courses' | 'timber' | 'shims'>): number =>
  courseHeight(crib) + crib.shims;

/** More courses than this are not listed one by one; nobody builds them. Heights and counts include them all. */
const mostListed = 60;

/** Whole courses. */
const wholeCourses = (crib: Crib): number => Math.max(0, Math.floor(crib.courses));

const other = { lengthwise: 'crosswise', crosswise: 'lengthwise' } as const;

/** Which way a course runs, from 0 at the ground: the top one as the plan says, the others in turn. */
const runsOf = (crib: Crib, index: number): Course['runs'] =>
  (wholeCourses(crib) - 1 - index) % 2 === 0 ? crib.top : other[crib.top];

const timbersIn = (crib: Crib, index: number): number => {
  const open = crib.layout[runsOf(crib, index)];
  if (index > 0 || crib.base !== 'solid') return open;
  return Math.max(open, Math.floor(crib.timber.length / crib.timber.width + 1e-9));
};

/** The courses of a crib, from the ground up. */
export function coursesOf(crib: Crib): readonly Course[] {
  const { timber } = crib;
  const widths = contactWidths(crib);
  return Array.from({ length: Math.min(wholeCourses(crib), mostListed) }, (_, i) => {
    const runs = runsOf(crib, i);
    const count = timbersIn(crib, i);
    const solid = i === 0 && crib.base === 'solid';
    return {
      number: i + 1,
      runs,
      solid,
      offsets: spread(count, solid ? count * timber.width : widths[other[runs]], timber.width),
      bottom: courseHeight({ timber, courses: i }),
    };
  });
}

/** How many pieces of timber lie in the course on the base: a count. */
export const baseTimbers = (crib: Crib): number => (wholeCourses(crib) === 0 ? 0 : timbersIn(crib, 0));

/** How many pieces of timber a crib takes: a count. */
export function timberCount(crib: Crib): number {
  const whole = wholeCourses(crib);
  if (whole === 0) return 0;
  const asTop = Math.ceil(whole / 2);
  const open = asTop * crib.layout[crib.top] + (whole - asTop) * crib.layout[other[crib.top]];
  return open - crib.layout[runsOf(crib, 0)] + timbersIn(crib, 0);
}
