/** @jsxRuntime automatic @jsxImportSource preact */

import { type Analysis, elementMessage, type SupportResult } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { message, name, term, type Words } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import type { JSX } from 'preact';
import { thingKinds } from '../space/thing-kinds.js';
import { sayIn } from '../text/say.js';
import { lockWords } from '../words/lock-words.js';

const figureIn = (support: SupportResult, key: string, words: Words): string => {
  const figure: Figure | undefined = support.figures[key];
  return figure === undefined ? '' : sayIn(words).figure(figure);
};

const columns = [
  { key: 'height', title: term('field-sheet.height') },
  { key: 'heightLimit', title: term('field-sheet.height-limit') },
  { key: 'load', title: term('field-sheet.load') },
  { key: 'capacity', title: term('field-sheet.capacity') },
  { key: 'use', title: term('field-sheet.use') },
];

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
  const shown = analysis.supports.filter((s) => thingKinds[s.kind].inSupportTable);
  const heads = columns.map(({ title }) => words.message(title));
  return (
    <table>
      <thead>
        <tr>
          <th>{words.message(term('field-sheet.support'))}</th>
          <th>{words.message(term('field-sheet.how'))}</th>
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
              {words.message(elementMessage(plan, s.id))}
            </td>
            <td>{howBuilt(s, plan, words)}</td>
            {columns.map(({ key }) => (
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
  const crib = plan.cribs.find((c) => c.id === support.id);
  if (crib !== undefined) {
    const { lengthwise, crosswise } = crib.layout;
    return words.message(
      message(crib.base === 'solid' ? 'field-sheet.crib-build-solid' : 'field-sheet.crib-build', {
        courses: name(String(crib.courses)),
        timber: name(crib.timber.nominal),
        length: name(sayIn(words).short(crib.timber.length)),
        lengthwise: name(String(lengthwise)),
        crosswise: name(String(crosswise)),
      }),
    );
  }
  const strut = plan.struts.find((s) => s.id === support.id);
  if (strut !== undefined) {
    const angle = figureIn(support, 'angle', words);
    return [
      strut.gear.name,
      words.message(strut.lock === undefined ? term('field-sheet.no-lock') : lockWords(strut.lock)),
      ...(angle ? [angle] : []),
    ].join(', ');
  }
  const tie = plan.ties.find((t) => t.id === support.id);
  if (tie !== undefined) return tie.gear.name;
  return '';
}
