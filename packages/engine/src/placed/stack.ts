import type { Crib } from '../model/support.js';

/** One crossing of the top two courses: where the load comes in. Plan axes. */
export interface Crossing {
  /** From 1, front to rear and driver to passenger side. */
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** Which crosswise timber it lies on from the front, and which lengthwise one from the driver side; from 0. */
  readonly row: number;
  readonly column: number;
}

/**
 * Width outside to outside of the contacts along each direction: the timber less its two overhangs; one timber
 * alone is as wide as it is.
 */
export const contactWidths = ({ timber, overhang, layout }: Crib) => {
  const between = timber.length - 2 * overhang;
  return {
    lengthwise: layout.crosswise > 1 ? between : timber.width,
    crosswise: layout.lengthwise > 1 ? between : timber.width,
  };
};

/** The lesser of the two widths: the way in which the crib sways. */
export const narrowWidth = (crib: Crib): number => {
  const { lengthwise, crosswise } = contactWidths(crib);
  return Math.min(lengthwise, crosswise);
};

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

/** Height of the courses, m. Wedges and shims stand on top of it. */
export const stackHeight = ({ courses, timber }: Crib): number => courses * timber.depth;

/** Timbers in each course, from the ground up. */
export function courseCounts(crib: Crib): readonly {
  readonly runs: 'lengthwise' | 'crosswise';
  readonly timbers: number;
}[] {
  const other = crib.top === 'lengthwise' ? 'crosswise' : 'lengthwise';
  const solid = Math.floor(crib.timber.length / crib.timber.width + 1e-9);
  return Array.from({ length: Math.max(0, Math.floor(crib.courses)) }, (_, i) => {
    const runs = (crib.courses - 1 - i) % 2 === 0 ? crib.top : other;
    const timbers = i === 0 && crib.base === 'solid' ? Math.max(solid, crib.layout[runs]) : crib.layout[runs];
    return { runs, timbers };
  });
}

export const timberCount = (crib: Crib): number => courseCounts(crib).reduce((sum, c) => sum + c.timbers, 0);
