/** @jsxRuntime automatic @jsxImportSource preact */
import type { Scene } from '@cribwright/drawing/page';
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

/** Turns the view in space on and off, where there is one. */
export function SpaceToggle(props: {
  readonly scene: Scene;
  readonly on: boolean;
  readonly set: (on: boolean) => void;
}): JSX.Element | null {
  const words = useWords();
  if (props.scene.space === undefined) return null;
  return (
    <button type="button" aria-pressed={props.on} onClick={() => props.set(!props.on)}>
      {words.rotate}
    </button>
  );
}
