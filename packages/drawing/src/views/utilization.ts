import type { SupportResult } from '@cribwright/engine';
import type { Words } from '@cribwright/messages';
import { headingOf } from '../look/heading-of.js';
import { gravest, type Look, momentOf } from '../look/look.js';
import { useBar } from '../pieces/use-bar.js';
import { useLegend, useLevel, useLimit } from '../pieces/use-level.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { heading, sheet } from '../sheet/sheet.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import { shortName } from '../text/short-name.js';
import { clip, wrap } from '../text/wrap.js';
import { sentences } from '../words/sentences.js';
import type { View } from './view.js';

/** How far each support's capacity is used, the worst first, with the case that governs. */
export const view: View = {
  id: 'utilization',
  order: 80,
  name: 'Utilization',
  shows: 'Utilization of each support, and the case that governs',
  offered: (_plan, analysis) => analysis.supports.some((s) => s.figures.use !== undefined),
  awaits: (plan) => [plan.cribs, plan.stepChocks, plan.struts, plan.ties].some((s) => s.length > 0),
  draw: (look) => {
    const title = headingOf(look, 'Use of each support');
    const head = heading(title);
    const list = look.analysis.supports
      .filter((s) => s.figures.use !== undefined)
      .sort((a, b) => (b.figures.use?.value?.high ?? Infinity) - (a.figures.use?.value?.high ?? Infinity));
    let y = head.bottom + 8;
    const limit = useLimit(look.plan);
    const rows = list.map((support) => {
      const row = useRow(support, look, limit, y);
      y = row.bottom;
      return row.item;
    });
    const mark = barLeft + (barWide * limit) / (1.25 * limit);
    return sheet({
      choice: look.choice,
      heading: title,
      words: sentences([title.title, ...momentOf(look), ...list.map((s) => useWords(s, look))]),
      body: [
        text('limit words', at(mark, head.bottom + 3), `limit ${look.say.ratio(limit)}`, type.small, {
          anchor: 'middle',
        }),
        line('limit', 'scale', at(mark, head.bottom + 4), at(mark, y - 1), { width: 0.25, dash: 'dashed' }),
        ...rows,
      ],
      bottom: y,
      legend: [...useLegend, { words: 'not known', sign: { kind: 'badge', level: 'warning' } }],
      display: look.plan.display,
    });
  },
};

const useWords = ({ kind, name, figures: { use } }: SupportResult, look: Look): string =>
  use?.value === undefined
    ? `${kind} ${name}: use not known`
    : `${kind} ${name}: ${look.say.figure(use)} used${use.governs === undefined ? '' : `, in this case: ${look.say.words.message(use.governs)}`}`;

const barLeft = margin + 40;
const barWide = 60;
const caseLeft = barLeft + barWide + 24;

/**
 * A crib is used as far as its worst contact is. Where that is not its whole load over its whole capacity, the sum of
 * that contact stands beside: else the numbers would not come to the share.
 */
function worstContact({ kind, figures: { use, load, capacity } }: SupportResult, words: Words): string {
  const [share, force, most] = [use?.value?.high, load?.value?.high, capacity?.value?.low];
  if (kind !== 'crib' || share === undefined || force === undefined || most === undefined) return '';
  const numbers = use && words.calculation(use)?.numbers;
  if (numbers === undefined || Math.abs(share - force / most) < 0.01) return '';
  return `; worst contact ${numbers}`;
}

/** As much of a support's kind and name as there is room for before its bar. */
const rowName = ({ kind, name }: SupportResult): string =>
  clip(`${kind} ${shortName(name)}`, barLeft - margin - 7, type.dimension, 'bold');

function useRow(
  support: SupportResult,
  look: Look,
  limit: number,
  top: number,
): { readonly item: Item; readonly bottom: number } {
  const { use, load, capacity } = support.figures;
  const level = useLevel(use, limit);
  const unknown = use?.value === undefined;
  const governs = wrap(
    unknown
      ? 'not known: the load or the capacity is missing'
      : use?.governs === undefined
        ? ''
        : look.say.words.message(use.governs),
    sheetWidth - margin - caseLeft,
    type.small,
  );
  const high = Math.max(8.6, governs.length * type.small * leading + 2.5);
  const sum = `${look.say.figure(load)} of ${look.say.figure(capacity)}${worstContact(support, look.say.words)}`;
  const sign =
    level.tone === 'danger' || unknown
      ? badge('mark', unknown ? 'warning' : 'danger', margin + 2, top + 1.6, 3.4)
      : [];
  return {
    bottom: top + high,
    item: group(
      support.id,
      [
        ...sign,
        text('name', at(margin + 5, top + 2.6), rowName(support), type.dimension, {
          weight: 'bold',
        }),
        useBar('bar', barLeft, top, barWide, 3.4, use, limit),
        text('share', at(barLeft + barWide + 4, top + 2.6), look.say.figure(use), type.dimension, {
          weight: 'bold',
          tone: unknown ? 'warning' : level.tone === 'good' ? 'label' : level.tone,
        }),
        text('sum', at(barLeft, top + 6.4), sum, type.small, { tone: 'dimension', halo: true }),
        ...governs.map((words, i) =>
          text(`case ${i}`, at(caseLeft, top + 2.4 + i * type.small * leading), words, type.small, {
            tone: 'dimension',
          }),
        ),
      ],
      {
        ref: { element: support.id },
        name: `${support.kind} ${support.name}: ${sum}, ${look.say.figure(use)} used, ${level.words}`,
        worst: level.tone === 'danger' ? 'danger' : gravest(look.findingsOn(support.id)),
      },
    ),
  };
}
