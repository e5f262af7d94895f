/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

/** Something said to the reader, and what may be done about it. */
export interface Notice {
  readonly text: string;
  readonly offer?: { readonly words: string; readonly take: () => void } | undefined;
}

/** What the reader must know now: that the drawing is not up to date, and what the host answered. */
export function Notices(props: {
  readonly outdated: string | undefined;
  readonly stale: string | undefined;
  readonly said: Notice | undefined;
  readonly dismiss: () => void;
}): JSX.Element {
  const words = useWords();
  return (
    <div role="status" class="notices">
      {props.outdated === undefined ? null : <p class="outdated-why">{props.outdated}</p>}
      {props.stale === undefined ? null : <p class="stale">{props.stale}</p>}
      {props.said === undefined ? null : (
        <p class="said">
          <span class="said-text">{props.said.text}</span>
          {props.said.offer === undefined ? null : (
            <button type="button" class="offer" onClick={props.said.offer.take}>
              {props.said.offer.words}
            </button>
          )}
          <button type="button" onClick={props.dismiss} aria-label={words.closeNotice}>
            ×
          </button>
        </p>
      )}
    </div>
  );
}
