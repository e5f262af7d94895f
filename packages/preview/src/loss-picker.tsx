/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

/** Chooses what has given way, to see the loads move. */
export function LossPicker(props: {
  readonly losses: readonly { readonly id: string; readonly title: string }[];
  readonly lost: string | undefined;
  readonly choose: (lost: string | undefined) => void;
}): JSX.Element | null {
  const words = useWords();
  if (props.losses.length === 0) return null;
  return (
    <label class="picker">
      {words.whatIf}
      <select
        value={props.lost ?? ''}
        onChange={(e) => props.choose(e.currentTarget.value === '' ? undefined : e.currentTarget.value)}
      >
        <option value="">{words.nothingLost}</option>
        {props.losses.map((loss) => (
          <option key={loss.id} value={loss.id}>
            {loss.title}
          </option>
        ))}
      </select>
    </label>
  );
}
