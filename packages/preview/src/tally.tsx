/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import type { Show } from './joined.js';
import { useWords } from './words-context.js';

const signs = { danger: '▲', warning: '■', note: '●' } as const;

/** How many findings there are. A check that could not run is said aloud; nothing here ever says safe. */
export function Tally({
  tally,
  plans,
}: {
  readonly tally: Show['tally'];
  readonly plans: number;
}): JSX.Element | null {
  const words = useWords();
  // Nothing was checked, so that nothing was found means nothing.
  if (plans === 0) return null;
  if (tally.unchecked === true) return <p class="tally">{words.notChecked}</p>;
  if (tally.parts.length === 0)
    return <p class="tally">{tally.pending === true ? words.pushPending : words.nothingFound}</p>;
  return (
    <p class="tally">
      {tally.parts.map(({ level, text }) => (
        <span key={text} class={level}>
          <span aria-hidden="true">{signs[level]} </span>
          {text}
        </span>
      ))}
    </p>
  );
}
