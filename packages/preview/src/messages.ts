import type { SentScene, ViewChoice, ViewId } from '@cribwright/drawing';
import type { PanelWords } from './panel-words.js';

// Everything the panel and its host say to each other. Each message names the file it speaks of.

/** What the host tells the panel. Numbers are counts: versions of the text, plans from 0, findings. */
export type ToPanel =
  | {
      readonly kind: 'show';
      readonly uri: string;
      readonly version: number;
      /** Plans in the file, in order; which one is shown. */
      readonly plans: readonly { readonly title: string }[];
      readonly shown: number;
      /** The views that this plan has something for. */
      readonly views: readonly {
        readonly id: ViewId;
        readonly name: string;
        readonly about?: readonly string[];
      }[];
      /** Parts that are as they were in the drawing that `after` names are left out. */
      readonly scenes: readonly SentScene[];
      /** Names this drawing. A panel that does not have the one it comes after says `ready`, and gets it whole. */
      readonly turn?: number;
      readonly after?: number;
      readonly stages: readonly { readonly id: string; readonly title: string }[];
      /** What may be taken as lost; without it, what could be before. */
      readonly losses?: readonly { readonly id: string; readonly title: string }[];
      readonly subjects: readonly { readonly id: string; readonly name: string; readonly kind: string }[];
      readonly tally: {
        readonly danger: number;
        readonly warning: number;
        readonly note: number;
        readonly notRun: number;
        /** The same in words, the gravest first: `2 unsafe`. Kinds without any are left out. */
        readonly parts: readonly { readonly level: 'danger' | 'warning' | 'note'; readonly text: string }[];
        /** A heavy check is still being worked out: this is not the last word. */
        readonly pending?: boolean;
        /** No check has run yet: the counts say nothing. */
        readonly unchecked?: boolean;
      };
      /** The panel's own words in the reader's language. */
      readonly words: PanelWords;
      /** The text has errors: this is the last drawing that could be made. */
      readonly stale: string | undefined;
    }
  /** The panel is to make a picture of what it shows, and answers with `export`. */
  | { readonly kind: 'make'; readonly uri: string; readonly format: 'svg' | 'png' | 'pdf' }
  /** Why what is drawn is not of the text as it stands; without a text it is. Counts until it is said otherwise. */
  | { readonly kind: 'outdated'; readonly uri: string; readonly text: string | undefined }
  | { readonly kind: 'light'; readonly uri: string; readonly element: string | undefined }
  | { readonly kind: 'say'; readonly uri: string; readonly text: string };

/** What the panel tells its host. Places are in plan axes, m; versions of the text and plans are counted from 0. */
export type FromPanel =
  /** The panel has no drawing, or not the one that was built upon. */
  | { readonly kind: 'ready' }
  /** A `show` has been painted. `words` is what the drawing says to a reader who does not see it. */
  | {
      readonly kind: 'drawn';
      readonly uri: string;
      readonly version: number;
      readonly words: string;
      /** It was drawn before its checks had run; it is drawn again when they have. */
      readonly unchecked: boolean;
    }
  | { readonly kind: 'choose'; readonly uri: string; readonly plan: number; readonly choice: ViewChoice }
  | {
      readonly kind: 'go to';
      readonly uri: string;
      readonly element: string;
      readonly property: string | undefined;
    }
  | {
      readonly kind: 'move';
      readonly uri: string;
      readonly version: number;
      readonly element: string;
      readonly moves: 'center' | 'base' | 'head' | 'vehicle';
      readonly to: { readonly x?: number; readonly y?: number; readonly z?: number };
    }
  | {
      readonly kind: 'courses';
      readonly uri: string;
      readonly version: number;
      readonly element: string;
      readonly by: 1 | -1;
    }
  | {
      readonly kind: 'export';
      readonly uri: string;
      readonly format: 'svg' | 'png' | 'pdf';
      readonly data: string | undefined;
    }
  | { readonly kind: 'keep'; readonly uri: string; readonly state: PanelState };

/** Survives a reload of the window. */
export interface PanelState {
  readonly uri: string;
  /** Which plan of the file, from 0. */
  readonly plan: number;
  readonly choice: ViewChoice;
  /** Ratio to the size at which the whole drawing fits. */
  readonly zoom: number;
  /** How far the drawing is moved, px. */
  readonly pan: { readonly x: number; readonly y: number };
}
