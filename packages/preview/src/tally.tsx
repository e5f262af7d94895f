/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import type { Show } from './joined.js';

/** How many findings there are. A check that could not run is said aloud; nothing here ever says safe. */
export function Tally({ tally }: { readonly tally: Show['tally'] }): JSX.Element {
  if (tally.unchecked === true)
    return <p class="tally">Not checked yet: loads and limits are being worked out.</p>;
  const parts = [
    { count: tally.danger, level: 'danger', sign: '▲', one: 'unsafe', many: 'unsafe' },
    {
      count: tally.notRun,
      level: 'warning',
      sign: '◆',
      one: 'check could not run',
      many: 'checks could not run',
    },
    { count: tally.warning, level: 'warning', sign: '◆', one: 'to look at again', many: 'to look at again' },
    { count: tally.note, level: 'note', sign: '●', one: 'note', many: 'notes' },
  ].filter((p) => p.count > 0);
  if (parts.length === 0 && tally.pending === true)
    return <p class="tally">Still checking how it may be pushed.</p>;
  if (parts.length === 0) return <p class="tally">The checks found nothing. That is not a promise.</p>;
  return (
    <p class="tally">
      {parts.map((p) => (
        <span key={p.one} class={p.level}>
          <span aria-hidden="true">{p.sign} </span>
          {p.count} {p.count === 1 ? p.one : p.many}
        </span>
      ))}
    </p>
  );
}
