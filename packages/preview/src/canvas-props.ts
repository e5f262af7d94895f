import type { Drag, Scene } from '@cribwright/drawing/page';
import type { RefObject } from 'preact';
import type { Dropped } from './dropped.js';

/** What a reader can do with a shape. */
export interface Acts {
  readonly goTo: (element: string, property: string | undefined) => void;
  readonly move: (drag: Drag, to: Dropped['to']) => void;
  readonly courses: (element: string, by: 1 | -1) => void;
  readonly stage: (by: 1 | -1) => void;
}

export interface CanvasProps {
  readonly scene: Scene;
  readonly lit: string | undefined;
  readonly zoom: number;
  readonly setZoom: (zoom: number) => void;
  readonly pan: RefObject<{ x: number; y: number }>;
  readonly inSpace: boolean;
  readonly moved: () => void;
  readonly say: (text: string | undefined) => void;
  readonly act: Acts;
}
