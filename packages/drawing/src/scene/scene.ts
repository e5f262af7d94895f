import type { Ref } from '@cribwright/model';
import type { Solid } from './solid.js';
import type { Tone } from './tone.js';

/** Names one way of looking at a plan. A view is one file in `views/`. */
export type ViewId =
  | 'top'
  | 'side'
  | 'end'
  | 'crib'
  | 'strut'
  | 'side push'
  | 'height limits'
  | 'utilization'
  | 'timeline'
  | 'ground'
  | '3d';

/** What the reader chose to see. Plain data, so a picture can be made again byte for byte. */
export interface ViewChoice {
  readonly view: ViewId;
  /** The support shown in a close-up, or lit in a layout. */
  readonly subject: string | undefined;
  /** Index into `Analysis.stages`; `undefined` is the finished work. */
  readonly stage: number | undefined;
  /** Id of a load case of that stage: what has given way. */
  readonly lost: string | undefined;
}

/**
 * A drawing as plain data: shapes on a sheet, in millimeters, x right and y down. One renderer turns it into
 * SVG for the panel, the command line and the page, so all three show the same.
 */
export interface Scene {
  readonly choice: ViewChoice;
  readonly title: string;
  /** The same in words, for a reader who does not see the drawing. */
  readonly words: string;
  readonly width: number;
  readonly height: number;
  /** How sheet and plan belong together, where the view is to scale. Lets a drag be turned into feet. */
  readonly frame: Frame | undefined;
  readonly items: readonly Item[];
  /** Always shown. Never empty. */
  readonly caution: string;
  /** The reader's units. */
  readonly display?: 'us' | 'si';
  /** The language of its words: `en`, `es`. */
  readonly language?: string;
  /** The same in space, where the view can also be turned. */
  readonly space?: SpaceScene;
}

/** What stands, in space: plan axes, meters. */
export interface SpaceScene {
  readonly things: readonly {
    readonly ref: Ref;
    readonly name: string;
    /** What stands over it where it is shown; nothing over what is small and many. */
    readonly label?: string;
    readonly worst?: 'danger' | 'warning' | 'note';
    readonly standing: 'stands' | 'adding' | 'later' | 'lost';
    readonly solids: readonly Solid[];
  }[];
}

/** sheet = origin + scale × plan, axis by axis. Scales are mm per meter and may be negative. */
export interface Frame {
  readonly across: { readonly axis: 'x' | 'y' | 'z'; readonly origin: number; readonly scale: number };
  readonly down: { readonly axis: 'x' | 'y' | 'z'; readonly origin: number; readonly scale: number };
}

/** A place on the sheet, mm from its top left corner, `y` downward. */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

/** One shape of a drawing. Places and widths in mm on the sheet. */
export type Item =
  | {
      readonly kind: 'group';
      readonly key: string;
      /** What the group stands for: a click goes to its line. */
      readonly ref: Ref | undefined;
      /** Spoken name: `crib A, 38.5 in, four contacts, 45 % of capacity`. */
      readonly name: string | undefined;
      readonly worst?: 'danger' | 'warning' | 'note';
      /** Where it may be dragged to, and what that changes. */
      readonly drag?: Drag;
      readonly items: readonly Item[];
    }
  | {
      readonly kind: 'line';
      readonly key: string;
      readonly tone: Tone;
      readonly from: SheetPoint;
      readonly to: SheetPoint;
      readonly width?: number;
      readonly dash?: 'dashed' | 'short dash' | 'dotted' | 'chain';
      readonly head?: 'arrow' | 'tick' | 'both arrows' | 'both ticks';
    }
  | {
      readonly kind: 'polygon';
      readonly key: string;
      readonly tone: Tone;
      readonly points: readonly SheetPoint[];
      readonly fill: 'solid' | 'light' | 'hatch' | 'cross' | 'none';
      readonly width?: number;
      readonly dash?: 'dashed' | 'dotted';
    }
  | {
      readonly kind: 'path';
      readonly key: string;
      readonly tone: Tone;
      readonly points: readonly SheetPoint[];
      readonly closed: boolean;
      readonly smooth: boolean;
      readonly fill: 'solid' | 'light' | 'none';
      readonly width?: number;
    }
  | {
      readonly kind: 'circle';
      readonly key: string;
      readonly tone: Tone;
      readonly center: SheetPoint;
      readonly radius: number;
      readonly fill: 'solid' | 'light' | 'hatch' | 'none';
      readonly width?: number;
    }
  | {
      readonly kind: 'text';
      readonly key: string;
      readonly tone: Tone;
      readonly at: SheetPoint;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly weight?: 'normal' | 'bold';
      readonly turn?: number;
      readonly halo?: boolean;
    };

/** A handle: dragging it proposes new values for properties of an element, snapped as said. */
export interface Drag {
  readonly element: string;
  readonly moves: 'center' | 'base' | 'head' | 'vehicle';
  readonly axes: readonly ('x' | 'y' | 'z')[];
  /** Values, in plan meters, that attract the drag. */
  readonly snaps: Readonly<Partial<Record<'x' | 'y' | 'z', readonly number[]>>>;
  /** Where it is now, plan meters. */
  readonly from?: Readonly<Partial<Record<'x' | 'y' | 'z', number>>>;
  /** Dropped places are rounded to this, m, unless they snap. */
  readonly grid?: number;
  /** Why it cannot be dragged: the place is worked out from something else. */
  readonly fixed?: string;
}
