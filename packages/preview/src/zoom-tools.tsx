/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';

export const zoomLimits = { least: 0.5, most: 12 } as const;

export const zoomTo = (zoom: number): number =>
  Math.min(zoomLimits.most, Math.max(zoomLimits.least, Math.round(zoom * 100) / 100));

export function ZoomTools(props: {
  readonly zoom: number;
  readonly set: (zoom: number) => void;
}): JSX.Element {
  return (
    <fieldset class="zoom" aria-label="Zoom">
      <button type="button" aria-label="Zoom out" onClick={() => props.set(zoomTo(props.zoom / 1.25))}>
        −
      </button>
      <button type="button" aria-label="Fit the whole drawing" onClick={() => props.set(1)}>
        Fit
      </button>
      <button type="button" aria-label="Zoom in" onClick={() => props.set(zoomTo(props.zoom * 1.25))}>
        +
      </button>
    </fieldset>
  );
}
