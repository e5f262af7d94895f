/** @jsxRuntime automatic @jsxImportSource preact */
import type { JSX } from 'preact';
import { useWords } from './words-context.js';

/** Chooses among the plans of a file, where there are several. */
export function PlanPicker(props: {
  readonly plans: readonly { readonly title: string }[];
  readonly shown: number;
  readonly choose: (plan: number) => void;
}): JSX.Element | null {
  const words = useWords();
  if (props.plans.length < 2) return null;
  return (
    <label class="picker">
      {words.plan}
      <select value={props.shown} onChange={(e) => props.choose(Number(e.currentTarget.value))}>
        {props.plans.map((plan, i) => (
          <option key={plan.title} value={i}>
            {plan.title}
          </option>
        ))}
      </select>
    </label>
  );
}
