/** @jsxRuntime automatic @jsxImportSource preact */
import type { Plan } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import type { JSX } from 'preact';
import { firstChoice } from '../draw-scene.js';
import { lookAt, type Shown } from '../views/look.js';
import { verdictsOf } from '../views/verdict.js';

/** What is unsafe and what was not checked, by name, before anything else. Nothing is ever called safe. */
export function Verdicts(props: {
  readonly plan: Plan;
  readonly analysis: Shown;
  readonly words: Words;
}): JSX.Element | undefined {
  const verdicts = verdictsOf(lookAt(props.plan, props.analysis, firstChoice, props.words));
  if (verdicts.length === 0) return undefined;
  return (
    <div class="verdicts">
      {verdicts.map((v) => (
        <p key={v.start} class={v.level}>
          {v.start}
          {v.names.join(', ')}
        </p>
      ))}
    </div>
  );
}
