/** @jsxRuntime automatic @jsxImportSource preact */

import type { Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { lookAt, type Shown } from '../look/look.js';
import { verdictsOf } from '../look/verdict.js';
import { firstChoice } from '../scenes/draw-scene.js';

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
