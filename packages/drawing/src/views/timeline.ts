import { message, name, term } from '@cribwright/messages';
import { headingOf } from '../look/heading-of.js';
import type { Look } from '../look/look.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { heading, sheet } from '../sheet/sheet.js';
import { leading, margin, sheetWidth, type } from '../sheet/sizes.js';
import type { Say } from '../text/say.js';
import { wrap } from '../text/wrap.js';
import { sentences } from '../words/sentences.js';
import type { View } from './view.js';

const left = margin + 84;
const right = sheetWidth - margin - 14;
const rowHigh = 7.2;

/** The steps over time: how long each takes, who is on it, and which ones hold up all that follows. */
export const view: View = {
  id: 'timeline',
  order: 90,
  name: term('view.timeline'),
  shows: term('view.timeline-shows'),
  offered: (_plan, analysis) => (analysis.timeline?.rows.length ?? 0) > 0,
  awaits: (plan) => plan.steps.length > 0,
  draw: (look) => {
    const { timeline } = look.analysis;
    if (timeline === undefined) throw new Error('the plan has no steps');
    const { say } = look;
    const title = headingOf(look, term('view.timeline-title'), [
      [timeline.total, timeline.crewPeak]
        .map((f) => `${capital(say.words.label(f))}: ${say.figure(f)}.`)
        .join(' '),
    ]);
    const head = heading(title);
    const top = head.bottom + 9;
    const end = Math.max(60, ...timeline.rows.map((r) => r.end.high));
    const x = (seconds: number) => left + ((right - left) * seconds) / end;
    let bottom = top;
    const rows = timeline.rows.map((row): Item => {
      const y = bottom;
      const [from, to] = [x(row.start.low), x(row.end.low)];
      const now = look.choice.stage !== undefined && look.stage?.step === row.step;
      const crew = row.crew === undefined ? '' : String(row.crew);
      const work = say.words.message(row.title);
      const title = wrap(
        `${row.number}. ${work}`,
        left - margin - 4,
        type.dimension,
        row.critical ? 'bold' : 'normal',
      );
      const high = rowHigh + (title.length - 1) * type.dimension * leading;
      bottom += high;
      return group(
        row.step,
        [
          ...(now
            ? [
                rectangle('now', 'note', margin, y - 0.7, sheetWidth - 2 * margin, high - 0.6, 'light', {
                  width: 0.3,
                }),
              ]
            : []),
          ...title.map((words, i) =>
            text(
              `title ${i}`,
              at(margin + 1, y + 3.4 + i * type.dimension * leading),
              words,
              type.dimension,
              { weight: row.critical ? 'bold' : 'normal' },
            ),
          ),
          rectangle('bar', 'load', from, y, Math.max(0.6, to - from), 4.4, row.critical ? 'hatch' : 'light', {
            width: 0.3,
          }),
          ...(row.end.high > row.end.low + 1
            ? [
                rectangle('longer', 'load', to, y + 1, Math.max(0, x(row.end.high) - to), 2.4, 'none', {
                  dash: 'dashed',
                  width: 0.2,
                }),
              ]
            : []),
          ...(crew === ''
            ? []
            : [
                text(
                  'crew',
                  at(x(row.end.high) + 1.5, y + 3.3),
                  say.message(message('view.crew-of', { crew: name(crew) })),
                  type.small,
                  {
                    tone: 'dimension',
                  },
                ),
              ]),
        ],
        {
          ref: { element: row.step },
          name: say.message(
            message('view.step-name', {
              ...stepHoles(row, say),
              ...(row.critical ? { critical: term('view.comma-critical') } : {}),
            }),
          ),
        },
      );
    });
    return sheet({
      choice: look.choice,
      heading: title,
      spoken: sentences([
        title.title,
        ...title.lines,
        ...timeline.rows.map((row) =>
          say.message(
            message('view.step-spoken', {
              ...stepHoles(row, say),
              ...(row.critical ? { critical: term('view.comma-critical-spoken') } : {}),
            }),
          ),
        ),
      ]),
      body: [...minutes(end, x, top - 3, bottom), ...rows],
      bottom: bottom + 2,
      legend: [
        {
          words: say.message(term('view.takes-this-long')),
          sign: { kind: 'fill', tone: 'load', fill: 'light' },
        },
        {
          words: say.message(term('view.critical-sign')),
          sign: { kind: 'fill', tone: 'load', fill: 'hatch' },
        },
        {
          words: say.message(term('view.may-take-longer')),
          sign: { kind: 'line', tone: 'load', dash: 'dashed' },
        },
      ],
      words: look.say.words,
    });
  },
};

/** What is said of one step, apart from whether it is critical. */
const stepHoles = (row: NonNullable<Look['analysis']['timeline']>['rows'][number], say: Say) => ({
  number: name(String(row.number)),
  work: row.title,
  start: name(say.duration(row.start)),
  end: name(say.duration(row.end)),
  ...(row.crew === undefined ? {} : { crew: message('view.comma-crew', { crew: name(String(row.crew)) }) }),
});

/** Marks on the axis of time, beside the one at its start. */
const mostMarks = 12;

function minutes(end: number, x: (seconds: number) => number, top: number, bottom: number): readonly Item[] {
  const total = end / 60;
  const step =
    [1, 2, 5, 10, 15, 30, 60, 120, 240].find((s) => total / s <= mostMarks) ??
    480 * Math.ceil(total / 480 / mostMarks);
  return Array.from({ length: Math.floor(total / step) + 1 }, (_, i) => {
    const at60 = x(i * step * 60);
    return group(`minute ${i * step}`, [
      line('mark', 'faint', at(at60, top), at(at60, bottom)),
      text('words', at(at60, top - 1), i === 0 ? '0 min' : String(i * step), type.small, {
        anchor: 'middle',
        tone: 'dimension',
      }),
    ]);
  });
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
