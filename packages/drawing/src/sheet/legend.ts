import { at, group, line, path, polygon, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import type { Tone } from '../scene/tone.js';
import { textWidth } from '../text/font-metrics.js';
import { leading, type } from './sizes.js';

/** One sign and what it means. */
export interface LegendEntry {
  readonly words: string;
  readonly sign:
    | { readonly kind: 'fill'; readonly tone: Tone; readonly fill: 'solid' | 'light' | 'hatch' | 'cross' }
    | {
        readonly kind: 'line';
        readonly tone: Tone;
        readonly dash?: 'dashed' | 'short dash' | 'dotted' | 'chain';
      }
    | { readonly kind: 'arrow'; readonly tone: Tone }
    | { readonly kind: 'badge'; readonly level: 'danger' | 'warning' | 'note' }
    | { readonly kind: 'center' };
}

const signWidth = 6;

/** Signs in rows from the left edge, no wider than `room`. */
export function legend(
  entries: readonly LegendEntry[],
  left: number,
  top: number,
  room: number,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const items: Item[] = [];
  let [x, y] = [left, top + 3];
  const step = type.small * leading + 1.2;
  for (const entry of entries) {
    const wide = signWidth + 1.5 + textWidth(entry.words, type.small) + 5;
    if (x > left && x + wide > left + room) [x, y] = [left, y + step];
    items.push(
      group(`legend ${entry.words}`, [
        ...sign(entry.sign, x, y - 1),
        text('words', at(x + signWidth + 1.5, y), entry.words, type.small),
      ]),
    );
    x += wide;
  }
  return { items, bottom: entries.length === 0 ? top : y + 1.5 };
}

function sign(s: LegendEntry['sign'], x: number, middle: number): readonly Item[] {
  switch (s.kind) {
    case 'fill':
      return [rectangle('sign', s.tone, x, middle - 1.4, signWidth, 2.8, s.fill)];
    case 'line':
      return [line('sign', s.tone, at(x, middle), at(x + signWidth, middle), s.dash ? { dash: s.dash } : {})];
    case 'arrow':
      return [line('sign', s.tone, at(x, middle), at(x + signWidth, middle), { head: 'arrow' })];
    case 'badge':
      return badge('sign', s.level, x + signWidth / 2, middle, 3);
    case 'center':
      return centerMark('sign', x + signWidth / 2, middle, 1.5);
  }
}

/**
 * The sign of a finding: a triangle for danger, a square for a warning, a circle for a note. They differ in
 * shape and letter, not only in color. Not a diamond: firefighters read that as a hazardous-materials placard.
 */
export function badge(
  key: string,
  level: 'danger' | 'warning' | 'note',
  x: number,
  y: number,
  size: number,
): readonly Item[] {
  const h = size / 2;
  const q = h * 0.85;
  const letter = level === 'danger' ? '!' : level === 'warning' ? '?' : 'i';
  const shape =
    level === 'danger'
      ? polygon(
          `${key} shape`,
          level,
          [at(x, y - h), at(x + h, y + h * 0.8), at(x - h, y + h * 0.8)],
          'light',
        )
      : level === 'warning'
        ? polygon(
            `${key} shape`,
            level,
            [at(x - q, y - q), at(x + q, y - q), at(x + q, y + q), at(x - q, y + q)],
            'light',
          )
        : ({
            kind: 'circle',
            key: `${key} shape`,
            tone: level,
            center: at(x, y),
            radius: h * 0.85,
            fill: 'light',
          } as const);
  const drop = level === 'danger' ? h * 0.62 : h * 0.42;
  return [
    shape,
    text(`${key} letter`, at(x, y + drop), letter, size * 0.62, {
      anchor: 'middle',
      weight: 'bold',
      tone: level,
    }),
  ];
}

/** The sign of a center of gravity: a circle, two of its quarters filled. */
export function centerMark(key: string, x: number, y: number, radius: number): readonly Item[] {
  const quarter = (from: number): Item => {
    const arc = [0, 1, 2, 3, 4].map((i) => {
      const a = from + (i * Math.PI) / 8;
      return at(x + Math.cos(a) * radius, y + Math.sin(a) * radius);
    });
    return path(`${key} quarter ${from === 0 ? 1 : 2}`, 'label', [at(x, y), ...arc], {
      closed: true,
      fill: 'solid',
      width: 0.1,
    });
  };
  return [
    {
      kind: 'circle',
      key: `${key} ring`,
      tone: 'scale',
      center: at(x, y),
      radius,
      fill: 'light',
      width: 0.3,
    },
    quarter(0),
    quarter(Math.PI),
  ];
}
