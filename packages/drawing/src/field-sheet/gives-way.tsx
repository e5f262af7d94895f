/** @jsxRuntime automatic @jsxImportSource preact */
import type { Analysis, LoadCase } from '@cribwright/engine';
import { message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { sayIn } from '../text/say.js';

/** Rows that fit beside the rest of the sheet. */
const most = 8;

interface Row {
  readonly title: string;
  readonly words: string;
  readonly falls: boolean;
  readonly moved: number;
}

/** What the crew's supports carry as built, and what each takes over when something that was there before gives way. */
export function GivesWay({
  plan,
  analysis,
  words,
}: {
  readonly plan: Plan;
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  const stage = analysis.stages.at(-1);
  if (stage === undefined) return <p>{words.message(term('field-sheet.losses-not-run'))}</p>;
  const rows = stage.losses.map((loss) => rowOf(loss, plan, words));
  const telling = rows
    .filter((r) => r.falls || r.moved > 0)
    .sort((a, b) => Number(b.falls) - Number(a.falls) || b.moved - a.moved);
  return (
    <table>
      <tbody>
        <tr>
          <td>{words.message(term('field-sheet.as-built'))}</td>
          <td>
            {stage.asBuilt.rests
              ? carried(stage.asBuilt, plan, words)
              : words.message(term('field-sheet.not-stable'))}
          </td>
        </tr>
        {telling.slice(0, most).map((r) => (
          <tr key={r.title}>
            <td>{r.title}</td>
            <td class={r.falls ? 'danger' : undefined}>{r.words}</td>
          </tr>
        ))}
        {telling.length > most ? (
          <tr>
            <td />
            <td>
              {words.message(
                message('field-sheet.smaller-cases', { cases: name(String(telling.length - most)) }),
              )}
            </td>
          </tr>
        ) : undefined}
      </tbody>
    </table>
  );
}

function rowOf(loss: LoadCase, plan: Plan, say: Words): Row {
  const falls = !loss.rests;
  return {
    title: say.message(loss.title),
    falls,
    words: falls
      ? say.message(message('field-sheet.nothing-holds', { free: loss.free ?? term('field-sheet.the-load') }))
      : carried(loss, plan, say),
    moved: Math.max(0, ...[...sums(loss, plan).values()]),
  };
}

/** The most that each of the crew's supports carries in a case: its contacts added up. */
function sums(loads: LoadCase, plan: Plan): ReadonlyMap<string, number> {
  const names = new Map([...plan.cribs, ...plan.stepChocks, ...plan.struts].map((s) => [s.id, s.name]));
  const total = new Map<string, number>();
  for (const r of loads.reactions) {
    const own = names.get(r.element);
    if (own !== undefined && r.load.high > 0) total.set(own, (total.get(own) ?? 0) + r.load.high);
  }
  return total;
}

function carried(loads: LoadCase, plan: Plan, words: Words): string {
  const { force } = sayIn(words);
  const each = [...sums(loads, plan)].map(
    ([own, newtons]) => `${own} ${force({ low: newtons, high: newtons })}`,
  );
  return each.length === 0 ? words.message(term('field-sheet.carry-nothing')) : each.join(', ');
}
