/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis } from '@cribwright/engine';
import { message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { facingWords, groundWords } from '../pieces/ground-words.js';
import { sayIn } from '../text/say.js';

/** The order of work: what, by how many, until when. */
export function Work({
  analysis,
  words,
}: {
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const { timeline } = analysis;
  if (timeline === undefined || timeline.rows.length === 0)
    return <p>{words.message(term('field-sheet.no-steps'))}</p>;
  return (
    <table>
      <tbody>
        {timeline.rows.map((row) => (
          <tr key={row.step}>
            <td class="number">{row.number}</td>
            <td>{words.message(row.title)}</td>
            <td class="number">
              {row.crew === undefined
                ? ''
                : words.message(message('field-sheet.crew', { crew: name(String(row.crew)) }))}
            </td>
            <td class="number">
              {words.message(
                message('field-sheet.done-at', {
                  time: name(sayIn(words).duration({ low: row.end.high, high: row.end.high })),
                }),
              )}
            </td>
          </tr>
        ))}
        <tr>
          <td />
          <td>{words.message(term('field-sheet.total'))}</td>
          <td class="number">
            {words.message(
              message('field-sheet.peak-crew', { crew: name(words.value(timeline.crewPeak).trim()) }),
            )}
          </td>
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
  if (rows.length === 0) return <p>{words.message(term('field-sheet.no-cache'))}</p>;
  return (
    <table>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.kind} ${words.message(row.item)}`}>
            <td>{words.message(row.item)}</td>
            <td class="number">{words.value(row.needed)}</td>
            <td class="number">
              {words.message(message('field-sheet.of-carried', { amount: name(words.value(row.carried)) }))}
            </td>
            <td class={row.short.value?.high === 0 ? 'number' : 'number danger'}>
              {row.short.value?.high === 0
                ? ''
                : words.message(message('field-sheet.short', { amount: name(words.value(row.short)) }))}
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
  const say = sayIn(words);
  const ground = groundWords(plan.ground, say.ratio(plan.ground.grade));
  return (
    <ul>
      {analysis.bodies.map((b) => (
        <li key={b.vehicle}>
          {words.message(
            message('field-sheet.body', {
              name: name(b.name),
              weight: name(say.figure(b.weight)),
              back: name(say.figure(b.center.x)),
              height: name(say.figure(b.center.z)),
            }),
          )}
        </li>
      ))}
      <li>
        {words.message(
          plan.ground.facing === undefined
            ? ground
            : message('field-sheet.ground-facing', { ground, facing: facingWords(plan.ground.facing) }),
        )}
      </li>
      {plan.sizeUp.map((s) => (
        <li key={s.item}>
          {s.item}: {s.finding}
        </li>
      ))}
    </ul>
  );
}
