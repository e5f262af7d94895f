import type { Ref } from '@cribwright/model';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { textWidth } from '../text/font-metrics.js';
import { type } from './sizes.js';
import { spread } from './spread.js';

/** A measured place along an edge of the drawing. */
export interface Station {
  readonly key: string;
  /** On the sheet, along the edge, mm. */
  readonly at: number;
  /** From here its leader runs to the edge, mm across the edge. */
  readonly from: number;
  readonly words: string;
  readonly ref?: Ref | undefined;
}

interface Edge {
  /** Labels begin here. */
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

const size = type.dimension;
const lineRoom = size * 1.22;

/** Labels under a drawing, each with a leader up to its place; turned upright where they would not fit side by side. */
export function stationsBelow(
  stations: readonly Station[],
  edge: Edge,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const wide = stations.map((s) => textWidth(s.words, size) + 2.5);
  const flat = spread(
    stations.map((s, i) => ({ at: s.at, room: wide[i] ?? 0 })),
    edge.low,
    edge.high,
  );
  if (flat !== undefined) {
    const items = stations.map((s, i) => {
      const x = flat[i] ?? s.at;
      return station(
        s,
        [at(s.at, s.from), at(s.at, edge.at), at(x, edge.at + 3.5)],
        [text('words', at(x, edge.at + 4 + size), s.words, size, { anchor: 'middle', tone: 'dimension' })],
      );
    });
    return { items, bottom: edge.at + 5 + size };
  }
  const perRow = Math.max(1, Math.floor((edge.high - edge.low) / lineRoom));
  const rows = Math.ceil(stations.length / perRow);
  const ordered = stations.map((s, i) => ({ s, i })).sort((a, b) => a.s.at - b.s.at || a.i - b.i);
  const deep = Math.max(...wide);
  const items = Array.from({ length: rows }, (_, row) => {
    const own = ordered.filter((_, i) => i % rows === row).map(({ s }) => s);
    const places = spread(
      own.map((s) => ({ at: s.at, room: lineRoom })),
      edge.low,
      edge.high,
    );
    const top = edge.at + 4.5 + row * deep;
    return own.map((s, i) => {
      const x = places?.[i] ?? s.at;
      return station(
        s,
        [at(s.at, s.from), at(s.at, edge.at), at(x, edge.at + 4), at(x, top)],
        [
          text('words', at(x + size * 0.34, top), s.words, size, {
            anchor: 'end',
            turn: -90,
            tone: 'dimension',
          }),
        ],
      );
    });
  }).flat();
  return { items, bottom: edge.at + 5 + rows * deep };
}

/** Labels at the right of a drawing, each with a leader to its height or place across. */
export function stationsRight(stations: readonly Station[], edge: Edge): readonly Item[] {
  const room = Math.min(lineRoom, (edge.high - edge.low) / Math.max(1, stations.length));
  const places = spread(
    stations.map((s) => ({ at: s.at, room })),
    edge.low,
    edge.high,
  );
  return stations.map((s, i) => {
    const y = places?.[i] ?? s.at;
    return station(
      s,
      [at(s.from, s.at), at(edge.at, s.at), at(edge.at + 3.5, y)],
      [text('words', at(edge.at + 4.3, y + size * 0.34), s.words, size, { tone: 'dimension' })],
    );
  });
}

const station = (s: Station, leader: readonly { x: number; y: number }[], words: readonly Item[]): Item =>
  group(
    `station ${s.key}`,
    [
      ...leader
        .slice(1)
        .map((to, i) => line(`leader ${i}`, 'dimension', leader[i] ?? to, to, { width: 0.12 })),
      ...words,
    ],
    { ref: s.ref },
  );

/** Room that labels at the right take, mm. */
export const rightRoom = (stations: readonly Station[]): number =>
  stations.length === 0 ? 0 : Math.max(...stations.map((s) => textWidth(s.words, size))) + 5.5;
