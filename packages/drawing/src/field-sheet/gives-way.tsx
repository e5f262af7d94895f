/** @jsxRuntime automatic @jsxImportSource preact */
import type { Analysis, LoadCase } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { show } from '@cribwright/units';
import type { JSX } from 'preact';

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
  if (stage === undefined) return <p>What happens when something gives way was not worked out.</p>;
  const rows = stage.losses.map((loss) => rowOf(loss, plan, words));
  const telling = rows
    .filter((r) => r.falls || r.moved > 0)
    .sort((a, b) => Number(b.falls) - Number(a.falls) || b.moved - a.moved);
  return (
    <table>
      <tbody>
        <tr>
          <td>as built</td>
          <td>{stage.asBuilt.rests ? carried(stage.asBuilt, plan) : 'does not stand'}</td>
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
            <td>cases that move less: {telling.length - most}</td>
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
      ? `nothing holds ${loss.free === undefined ? 'it' : say.message(loss.free)}`
      : carried(loss, plan),
    moved: Math.max(0, ...[...sums(loss, plan).values()]),
  };
}

/** The most that each of the crew's supports carries in a case: its contacts added up. */
function sums(loads: LoadCase, plan: Plan): ReadonlyMap<string, number> {
  const names = new Map([...plan.cribs, ...plan.stepChocks, ...plan.struts].map((s) => [s.id, s.name]));
  const total = new Map<string, number>();
  for (const r of loads.reactions) {
    const name = names.get(r.element);
    if (name !== undefined && r.load.high > 0) total.set(name, (total.get(name) ?? 0) + r.load.high);
  }
  return total;
}

function carried(loads: LoadCase, plan: Plan): string {
  const unit = plan.display === 'us' ? 'lb' : 'kN';
  const each = [...sums(loads, plan)].map(
    ([name, newtons]) => `${name} ${show(newtons, 'force', unit, { rounding: 'up' })}`,
  );
  return each.length === 0 ? 'the crew’s supports carry nothing' : each.join(', ');
}
