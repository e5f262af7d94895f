import { elementMessage, type GroundResult } from '@cribwright/engine';
import { message, name, term } from '@cribwright/messages';
import { headingOf } from '../look/heading-of.js';
import { gravest, type Look } from '../look/look.js';
import { useLegend } from '../pieces/use-level.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, type } from '../sheet/sizes.js';
import { clip } from '../text/wrap.js';
import { sentences } from '../words/sentences.js';
import type { View } from './view.js';

const [left, wide] = [margin + 42, 90];

/** How hard each crib and strut base presses on the ground, against what the surface takes. */
export const view: View = {
  id: 'ground',
  order: 100,
  name: term('view.ground'),
  shows: term('view.ground-shows'),
  offered: (_plan, analysis) => analysis.ground.length > 0,
  awaits: (plan) => [plan.cribs, plan.stepChocks, plan.struts].some((s) => s.length > 0),
  draw: (look) => {
    const { say } = look;
    const { surface } = look.plan.ground;
    const title = headingOf(look, term('view.ground-title'), [
      say.message(message('view.ground-surface', { surface: name(surface.name) })),
    ]);
    const head = heading(title);
    const list = [...look.analysis.ground].sort((a, b) => share(b) - share(a));
    const known = list.flatMap((g) => [g.pressure.value?.high ?? 0, g.allowable.value?.low ?? 0]);
    const most = Math.max(1, ...known) * 1.1;
    const top = head.bottom + 10;
    const rows = list.map((g, i) => groundRow(g, look, top + i * 11, (pa) => (wide * pa) / most));
    return sheet({
      choice: look.choice,
      heading: title,
      spoken: sentences([
        title.title,
        ...title.lines,
        ...list.map((g) =>
          say.message(
            message('view.ground-row', {
              element: elementMessage(look.plan, g.element),
              pressure: name(say.figure(g.pressure)),
              allowable: name(say.figure(g.allowable)),
            }),
          ),
        ),
      ]),
      body: [
        text('pressure', at(left, head.bottom + 4), say.message(term('view.ground-bar')), type.small, {
          tone: 'dimension',
        }),
        text(
          'sum',
          at(left + wide + 6, head.bottom + 4),
          say.message(term('view.load-over-area')),
          type.small,
          { tone: 'dimension' },
        ),
        ...rows,
      ],
      bottom: top + list.length * 11,
      legend: [
        ...useLegend(say),
        { words: say.message(term('view.allowable-bearing')), sign: { kind: 'line', tone: 'ground' } },
        { words: say.message(term('view.unsafe-or-not-known')), sign: { kind: 'badge', level: 'danger' } },
      ],
      words: look.say.words,
    });
  },
};

const share = (g: GroundResult): number => {
  const [pressure, allowable] = [g.pressure.value?.high, g.allowable.value?.low];
  return pressure === undefined || allowable === undefined ? Infinity : pressure / allowable;
};

function groundRow(g: GroundResult, look: Look, top: number, length: (pa: number) => number): Item {
  const { say } = look;
  const [pressure, allowable] = [g.pressure.value?.high, g.allowable.value?.low];
  const part = share(g);
  const unknown = !Number.isFinite(part);
  const level =
    part > 1 + 1e-9
      ? ({ tone: 'danger', fill: 'cross' } as const)
      : part > 0.8
        ? ({ tone: 'warning', fill: 'hatch' } as const)
        : ({ tone: 'good', fill: 'light' } as const);
  const element = elementMessage(look.plan, g.element);
  const sum = `${say.figure(g.load)} ÷ ${say.figure(g.bearing)} = ${say.figure(g.pressure)}`;
  const pad = g.padNeeded === undefined ? undefined : name(say.figure(g.padNeeded));
  return group(
    g.element,
    [
      ...(part > 1 + 1e-9 || unknown
        ? badge('mark', unknown ? 'warning' : 'danger', margin + 2, top + 1.8, 3.4)
        : []),
      text(
        'name',
        at(margin + 5, top + 2.8),
        clip(say.message(element), left - margin - 7, type.dimension, 'bold'),
        type.dimension,
        { weight: 'bold' },
      ),
      ...(pressure === undefined
        ? [
            text(
              'unknown',
              at(left, top + 2.8),
              say.message(term('view.pressure-not-known')),
              type.dimension,
              { tone: 'warning' },
            ),
          ]
        : [
            rectangle(
              'bar',
              level.tone,
              left,
              top,
              Math.max(0.4, length(pressure)),
              4,
              unknown ? 'none' : level.fill,
              { width: 0.3 },
            ),
          ]),
      ...(allowable === undefined
        ? [
            text('no limit', at(left, top + 7.6), say.message(term('view.allowable-not-known')), type.small, {
              tone: 'warning',
              weight: 'bold',
            }),
          ]
        : [
            line(
              'allowable',
              'ground',
              at(left + length(allowable), top - 1),
              at(left + length(allowable), top + 5),
              { width: 0.6 },
            ),
            text(
              'allowable words',
              at(left, top + 7.6),
              say.message(message('view.allowable', { allowable: name(say.figure(g.allowable)) })),
              type.small,
              {
                tone: 'dimension',
              },
            ),
          ]),
      text('sum', at(left + wide + 6, top + 3), sum, type.small),
      ...(pad === undefined
        ? []
        : [
            text(
              'pad',
              at(left + wide + 6, top + 7.2),
              say.message(message('view.pad-needed', { size: pad })),
              type.small,
              { weight: 'bold' },
            ),
          ]),
    ],
    {
      ref: { element: g.element },
      name: say.message(
        message('view.ground-row-name', {
          element,
          calculation: name(sum),
          allowable: name(say.figure(g.allowable)),
          ...(pad === undefined ? {} : { pad: message('view.comma-pad-needed', { size: pad }) }),
        }),
      ),
      worst: part > 1 + 1e-9 ? 'danger' : gravest(look.findingsOn(g.element)),
    },
  );
}
