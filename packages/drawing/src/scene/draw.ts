import type { Ref } from '@cribwright/model';
import type { Drag, Item, SheetPoint } from './scene.js';
import type { Tone } from './tone.js';

type Of<Kind extends Item['kind']> = Extract<Item, { kind: Kind }>;
type LineOptions = Partial<Pick<Of<'line'>, 'width' | 'dash' | 'head'>>;
type PolygonOptions = Partial<Pick<Of<'polygon'>, 'width' | 'dash'>>;
type TextOptions = Partial<Pick<Of<'text'>, 'weight' | 'turn' | 'halo' | 'anchor' | 'tone'>>;

/** Short ways to say shapes. Keys need only be unique within their group. */
export const at = (x: number, y: number): SheetPoint => ({ x, y });

export const line = (
  key: string,
  tone: Tone,
  from: SheetPoint,
  to: SheetPoint,
  options: LineOptions = {},
): Item => ({
  kind: 'line',
  key,
  tone,
  from,
  to,
  ...options,
});

export const polygon = (
  key: string,
  tone: Tone,
  points: readonly SheetPoint[],
  fill: Of<'polygon'>['fill'],
  options: PolygonOptions = {},
): Item => ({ kind: 'polygon', key, tone, points, fill, ...options });

/** A rectangle from its corner, size may be negative. */
export const rectangle = (
  key: string,
  tone: Tone,
  x: number,
  y: number,
  width: number,
  height: number,
  fill: Of<'polygon'>['fill'],
  options: PolygonOptions = {},
): Item =>
  polygon(
    key,
    tone,
    [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)],
    fill,
    options,
  );

export const path = (
  key: string,
  tone: Tone,
  points: readonly SheetPoint[],
  options: Partial<Pick<Of<'path'>, 'closed' | 'smooth' | 'fill' | 'width'>> = {},
): Item => ({ kind: 'path', key, tone, points, closed: false, smooth: false, fill: 'none', ...options });

export const circle = (
  key: string,
  tone: Tone,
  center: SheetPoint,
  radius: number,
  fill: Of<'circle'>['fill'],
  width?: number,
): Item => ({ kind: 'circle', key, tone, center, radius, fill, ...(width === undefined ? {} : { width }) });

export const text = (
  key: string,
  where: SheetPoint,
  words: string,
  size: number,
  options: TextOptions = {},
): Item => ({
  kind: 'text',
  key,
  tone: 'label',
  at: where,
  text: words,
  size,
  anchor: 'start',
  ...options,
});

export const group = (
  key: string,
  items: readonly Item[],
  about: {
    readonly ref?: Ref | undefined;
    readonly name?: string | undefined;
    readonly worst?: 'danger' | 'warning' | 'note' | undefined;
    readonly drag?: Drag | undefined;
  } = {},
): Item => ({
  kind: 'group',
  key,
  ref: about.ref,
  name: about.name,
  ...(about.worst === undefined ? {} : { worst: about.worst }),
  ...(about.drag === undefined ? {} : { drag: about.drag }),
  items,
});
