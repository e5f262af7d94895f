import { elementMessage, type SupportResult } from '@cribwright/engine';
import { message, name, term } from '@cribwright/messages';
import { headingOf } from '../look/heading-of.js';
import { gravest, type Look, momentOf } from '../look/look.js';
import { shortWords } from '../pieces/short-words.js';
import { useBar } from '../pieces/use-bar.js';
import { useLegend, useLevel, useLimit } from '../pieces/use-level.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { heading, sheet } from '../sheet/sheet.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import type { Say } from '../text/say.js';
import { clip, wrap } from '../text/wrap.js';
import { sentences } from '../words/sentences.js';
import type { View } from './view.js';

/** How far each support's capacity is used, the worst first, with the case that governs. */
export const view: View = {
  id: 'utilization',
  order: 80,
  name: term('view.utilization'),
  shows: term('view.utilization-shows'),
  offered: (_plan, analysis) => analysis.supports.some((s) => s.figures.use !== undefined),
  awaits: (plan) => [plan.cribs, plan.stepChocks, plan.struts, plan.ties].some((s) => s.length > 0),
  draw: (look) => {
    const title = headingOf(look, term('view.utilization-title'));
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
      spoken: sentences([title.title, ...momentOf(look), ...list.map((s) => useWords(s, look))]),
      body: [
        text(
          'limit words',
          at(mark, head.bottom + 3),
          look.say.message(message('view.use-limit', { limit: name(look.say.ratio(limit)) })),
          type.small,
          {
            anchor: 'middle',
          },
        ),
        line('limit', 'scale', at(mark, head.bottom + 4), at(mark, y - 1), { width: 0.25, dash: 'dashed' }),
        ...rows,
      ],
      bottom: y,
      legend: [
        ...useLegend(look.say),
        { words: look.say.message(term('view.not-known')), sign: { kind: 'badge', level: 'warning' } },
      ],
      words: look.say.words,
    });
  },
};

function useWords({ id, figures: { use } }: SupportResult, look: Look): string {
  const support = elementMessage(look.plan, id);
  if (use?.value === undefined) return look.say.message(message('view.use-not-known', { support }));
  const holes = { support, use: name(look.say.figure(use)) };
  return look.say.message(
    use.governs === undefined
      ? message('view.use-spoken', holes)
      : message('view.use-spoken-case', { ...holes, case: use.governs }),
  );
}

const barLeft = margin + 40;
const barWide = 60;
const caseLeft = barLeft + barWide + 24;

/**
 * A crib is used as far as its worst contact is. Where that is not its whole load over its whole capacity, the sum of
 * that contact stands beside: else the numbers would not come to the share.
 */
function worstContact({ kind, figures: { use, load, capacity } }: SupportResult, { words }: Say): string {
  const [share, force, most] = [use?.value?.high, load?.value?.high, capacity?.value?.low];
  if (kind !== 'crib' || share === undefined || force === undefined || most === undefined) return '';
  const numbers = use && words.calculation(use)?.numbers;
  if (numbers === undefined || Math.abs(share - force / most) < 0.01) return '';
  return words.message(message('view.worst-contact', { calculation: name(numbers) }));
}

/** As much of a support's kind and name as there is room for before its bar. */
const rowName = (support: SupportResult, look: Look): string =>
  clip(look.say.message(shortWords(support, look)), barLeft - margin - 7, type.dimension, 'bold');

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
      ? look.say.message(term('view.use-inputs-missing'))
      : use?.governs === undefined
        ? ''
        : look.say.words.message(use.governs),
    sheetWidth - margin - caseLeft,
    type.small,
  );
  const high = Math.max(8.6, governs.length * type.small * leading + 2.5);
  const most = name(look.say.figure(capacity));
  const ofCapacity =
    load?.value === undefined
      ? message('view.load-not-known-capacity', { capacity: most })
      : message('view.load-of-capacity', { load: name(look.say.figure(load)), capacity: most });
  const sum = `${look.say.message(ofCapacity)}${worstContact(support, look.say)}`;
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
        text('name', at(margin + 5, top + 2.6), rowName(support, look), type.dimension, {
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
        name: look.say.message(
          message('view.use-row-name', {
            support: elementMessage(look.plan, support.id),
            numbers: name(sum),
            use: name(look.say.figure(use)),
            level: level.words,
          }),
        ),
        worst: level.tone === 'danger' ? 'danger' : gravest(look.findingsOn(support.id)),
      },
    ),
  };
}
