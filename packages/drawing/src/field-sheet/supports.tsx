/** @jsxRuntime automatic @jsxImportSource preact */

import type { Analysis, SupportResult } from '@cribwright/engine';
import type { Figure, Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { show } from '@cribwright/units';
import type { JSX } from 'preact';

const figureIn = (support: SupportResult, key: string, words: Words): string => {
  const figure: Figure | undefined = support.figures[key];
  return figure === undefined ? '' : words.value(figure);
};

/** What stands where: how each support is built, how high, what it carries and what it could. */
export function Supports({
  plan,
  analysis,
  words,
}: {
  readonly plan: Plan;
  readonly analysis: Analysis;
  readonly words: Words;
}): JSX.Element {
  // Chocks and pads stand in the order of work and among the materials; they carry no figure of their own.
  const shown = analysis.supports.filter((s) => s.kind !== 'chock' && s.kind !== 'pad');
  const heads = ['height', 'at most', 'carries', 'could carry', 'use'];
  return (
    <table>
      <thead>
        <tr>
          <th>support</th>
          <th>how</th>
          {heads.map((h) => (
            <th class="number" key={h}>
              {h}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map((s) => (
          <tr key={s.id} class={s.worst === 'danger' ? 'danger-row' : undefined}>
            <td class={s.worst === 'danger' ? 'danger' : undefined}>
              {s.kind} {s.name}
            </td>
            <td>{howBuilt(s, plan, words)}</td>
            {['height', 'heightLimit', 'load', 'capacity', 'use'].map((key) => (
              <td class="number" key={key}>
                {figureIn(s, key, words)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function howBuilt(support: SupportResult, plan: Plan, words: Words): string {
  const length = (meters: number) =>
    show(meters, 'length', plan.display === 'us' ? 'in' : 'mm', { rounding: 'nearest' });
  const crib = plan.cribs.find((c) => c.id === support.id);
  if (crib !== undefined) {
    const { lengthwise, crosswise } = crib.layout;
    const base = crib.base === 'solid' ? ', solid base' : '';
    return `${crib.courses} courses of ${crib.timber.nominal}, ${length(crib.timber.length)} long, ${lengthwise} by ${crosswise}${base}`;
  }
  const strut = plan.struts.find((s) => s.id === support.id);
  if (strut !== undefined) {
    const angle = figureIn(support, 'angle', words);
    return [strut.gear.name, strut.lock ?? 'no lock', ...(angle ? [angle] : [])].join(', ');
  }
  const tie = plan.ties.find((t) => t.id === support.id);
  if (tie !== undefined) return tie.gear.name;
  return '';
}
