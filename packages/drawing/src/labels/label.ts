import type { Ref } from '@cribwright/model';
import type { Box } from '../scene/bounds.js';
import type { SheetPoint } from '../scene/scene.js';
import type { Tone } from '../scene/tone.js';
import { leading, type } from '../sheet/sizes.js';
import { textWidth } from '../text/font-metrics.js';

/** Words that belong to a place in the drawing. */
export interface Label {
  readonly key: string;
  readonly at: SheetPoint;
  /** Half the size of what it names: the label keeps off it. */
  readonly clear: { readonly x: number; readonly y: number };
  /** In bold, on the first line. */
  readonly name: string;
  /** On the same line, after the name. */
  readonly beside?: string | undefined;
  /** Under it. */
  readonly lines: readonly string[];
  readonly badge?: 'danger' | 'warning' | 'note' | undefined;
  readonly ref?: Ref;
  readonly tone?: Tone;
  /** The label belongs inside this, as a body's name does: anywhere in it, near its middle by choice. */
  readonly inside?: Box;
}

/** Sizes within a label, mm. */
export const labelSize = type.label;
export const labelStep = labelSize * leading;
export const labelGap = 1.3;
export const badgeRoom = 4.4;

/** The room that a label takes, mm. */
export const roomOf = (label: Label): { readonly wide: number; readonly high: number } => ({
  wide:
    Math.max(firstLine(label), ...label.lines.map((l) => textWidth(l, labelSize))) +
    (label.badge === undefined ? 0 : badgeRoom) +
    1,
  high: label.lines.length * labelStep + labelSize + 0.6,
});

const firstLine = ({ name, beside }: Label): number =>
  textWidth(name, labelSize, 'bold') + (beside === undefined ? 0 : labelGap + textWidth(beside, labelSize));
