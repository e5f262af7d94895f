/** @jsxRuntime automatic @jsxImportSource preact */
import type { Words } from '@cribwright/messages';
import type { JSX } from 'preact';
import type { Shown } from '../look/look.js';
import { notWholeLines } from '../look/not-whole.js';

/** The mark of a plan that was not read whole, with the places, before all else on the page. */
export function NotWhole({
  analysis,
  words,
}: {
  readonly analysis: Shown;
  readonly words: Words;
}): JSX.Element | undefined {
  const [first, ...places] = notWholeLines(analysis, 12, words);
  if (first === undefined) return undefined;
  return (
    <div class="notwhole">
      <p>{first}</p>
      <ul>
        {places.map((place) => (
          <li key={place}>{place}</li>
        ))}
      </ul>
    </div>
  );
}
