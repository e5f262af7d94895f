/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';

/** Chooses what has given way, to see the loads move. */
export function LossPicker(props: {
  readonly losses: readonly { readonly id: string; readonly title: string }[];
  readonly lost: string | undefined;
  readonly choose: (lost: string | undefined) => void;
}): JSX.Element | null {
  if (props.losses.length === 0) return null;
  return (
    <label class="picker">
      What if
      <select
        value={props.lost ?? ''}
        onChange={(e) => props.choose(e.currentTarget.value === '' ? undefined : e.currentTarget.value)}
      >
        <option value="">all holds</option>
        {props.losses.map((loss) => (
          <option key={loss.id} value={loss.id}>
            {loss.title}
          </option>
        ))}
      </select>
    </label>
  );
}
