/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';

/** What the reader must know now: that the drawing is not up to date, and what the host answered. */
export function Notices(props: {
  readonly stale: string | undefined;
  readonly said: string | undefined;
  readonly dismiss: () => void;
}): JSX.Element {
  return (
    <div role="status" class="notices">
      {props.stale === undefined ? null : <p class="stale">{props.stale}</p>}
      {props.said === undefined ? null : (
        <p class="said">
          {props.said}
          <button type="button" onClick={props.dismiss} aria-label="Close this notice">
            ×
          </button>
        </p>
      )}
    </div>
  );
}
