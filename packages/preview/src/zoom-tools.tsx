/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

export const zoomLimits = { least: 0.5, most: 12 } as const;

export const zoomTo = (zoom: number): number =>
  Math.min(zoomLimits.most, Math.max(zoomLimits.least, Math.round(zoom * 100) / 100));

export function ZoomTools(props: {
  readonly zoom: number;
  readonly set: (zoom: number) => void;
}): JSX.Element {
  const words = useWords();
  return (
    <fieldset class="zoom" aria-label={words.zoom}>
      <button type="button" aria-label={words.zoomOut} onClick={() => props.set(zoomTo(props.zoom / 1.25))}>
        −
      </button>
      <button type="button" aria-label={words.fitAll} onClick={() => props.set(1)}>
        {words.fit}
      </button>
      <button type="button" aria-label={words.zoomIn} onClick={() => props.set(zoomTo(props.zoom * 1.25))}>
        +
      </button>
    </fieldset>
  );
}
