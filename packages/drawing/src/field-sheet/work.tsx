/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { show } from '@cribwright/units';
import type { JSX } from 'preact';
import { facingWords, groundWords } from '../pieces/ground-words.js';

const minutes = (seconds: number): string => show(seconds, 'duration', 'min', { rounding: 'up' });

/** The order of work: what, by how many, until when. */
export function Work({
  analysis,
  words,
}: {
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const { timeline } = analysis;
  if (timeline === undefined || timeline.rows.length === 0) return <p>No order of work is written down.</p>;
  return (
    <table>
      <tbody>
        {timeline.rows.map((row) => (
          <tr key={row.step}>
            <td class="number">{row.number}</td>
            <td>{words.message(row.title)}</td>
            <td class="number">{row.crew === undefined ? '' : `crew ${row.crew}`}</td>
            <td class="number">{`done at ${minutes(row.end.high)}`}</td>
          </tr>
        ))}
        <tr>
          <td />
          <td>all of it</td>
          <td class="number">{`crew ${words.value(timeline.crewPeak)}`}</td>
          <td class="number">{words.value(timeline.total)}</td>
        </tr>
      </tbody>
    </table>
  );
}

/** What is needed, against what the units carry. */
export function Materials({
  analysis,
  words,
}: {
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const rows = analysis.materials?.rows ?? [];
  if (rows.length === 0) return <p>Nothing from a cache.</p>;
  return (
    <table>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.kind} ${words.message(row.item)}`}>
            <td>{words.message(row.item)}</td>
            <td class="number">{words.value(row.needed)}</td>
            <td class="number">{`of ${words.value(row.carried)}`}</td>
            <td class={row.short.value?.high === 0 ? 'number' : 'number danger'}>
              {row.short.value?.high === 0 ? '' : `short ${words.value(row.short)}`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The weights that everything rests on, and what was found at the size-up. */
export function Found({
  plan,
  analysis,
  words,
}: {
  readonly plan: Plan;
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  return (
    <ul>
      {analysis.bodies.map((b) => (
        <li key={b.vehicle}>
          {b.name}: {words.value(b.weight)}, center {words.value(b.center.x)} back, {words.value(b.center.z)}{' '}
          high
        </li>
      ))}
      <li>
        on {groundWords(plan.ground, show(plan.ground.grade, 'ratio', '%', { rounding: 'up' }))}
        {plan.ground.facing === undefined ? '' : `, ${facingWords(plan.ground.facing)}`}
      </li>
      {plan.sizeUp.map((s) => (
        <li key={s.item}>
          {s.item}: {s.finding}
        </li>
      ))}
    </ul>
  );
}
