import type { GroundResult } from '@cribwright/engine';
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
  name: 'Ground',
  shows: 'Pressure under each crib and strut base against what the ground takes',
  offered: (_plan, analysis) => analysis.ground.length > 0,
  awaits: (plan) => [plan.cribs, plan.stepChocks, plan.struts].some((s) => s.length > 0),
  draw: (look) => {
    const { say } = look;
    const { surface } = look.plan.ground;
    const title = headingOf(look, 'Pressure on the ground', [`Ground: ${surface.name}`]);
    const head = heading(title);
    const list = [...look.analysis.ground].sort((a, b) => share(b) - share(a));
    const known = list.flatMap((g) => [g.pressure.value?.high ?? 0, g.allowable.value?.low ?? 0]);
    const most = Math.max(1, ...known) * 1.1;
    const top = head.bottom + 10;
    const rows = list.map((g, i) => groundRow(g, look, top + i * 11, (pa) => (wide * pa) / most));
    return sheet({
      choice: look.choice,
      heading: title,
      words: sentences([
        title.title,
        ...title.lines,
        ...list.map(
          (g) =>
            `${fullName(g, look)}: ${say.figure(g.pressure)}, the ground takes ${say.figure(g.allowable)}`,
        ),
      ]),
      body: [
        text('pressure', at(left, head.bottom + 4), 'pressure, and what the ground takes', type.small, {
          tone: 'dimension',
        }),
        text('sum', at(left + wide + 6, head.bottom + 4), 'load ÷ area', type.small, { tone: 'dimension' }),
        ...rows,
      ],
      bottom: top + list.length * 11,
      legend: [
        ...useLegend,
        { words: 'what the ground takes', sign: { kind: 'line', tone: 'ground' } },
        { words: 'unsafe, or not known', sign: { kind: 'badge', level: 'danger' } },
      ],
      display: look.plan.display,
    });
  },
};

const share = (g: GroundResult): number => {
  const [pressure, allowable] = [g.pressure.value?.high, g.allowable.value?.low];
  return pressure === undefined || allowable === undefined ? Infinity : pressure / allowable;
};

const fullName = ({ element }: GroundResult, look: Look): string => {
  const thing = look.things.find((t) => t.id === element);
  return thing === undefined ? element : `${thing.kind} ${thing.name}`;
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
  const name = fullName(g, look);
  const sum = `${say.figure(g.load)} ÷ ${say.figure(g.bearing)} = ${say.figure(g.pressure)}`;
  const pad = g.padNeeded === undefined ? '' : `, pad needed ${say.figure(g.padNeeded)}`;
  return group(
    g.element,
    [
      ...(part > 1 + 1e-9 || unknown
        ? badge('mark', unknown ? 'warning' : 'danger', margin + 2, top + 1.8, 3.4)
        : []),
      text(
        'name',
        at(margin + 5, top + 2.8),
        clip(name, left - margin - 7, type.dimension, 'bold'),
        type.dimension,
        { weight: 'bold' },
      ),
      ...(pressure === undefined
        ? [text('unknown', at(left, top + 2.8), 'pressure not known', type.dimension, { tone: 'warning' })]
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
            text('no limit', at(left, top + 7.6), 'what the ground takes is not known', type.small, {
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
            text('allowable words', at(left, top + 7.6), `takes ${say.figure(g.allowable)}`, type.small, {
              tone: 'dimension',
            }),
          ]),
      text('sum', at(left + wide + 6, top + 3), sum, type.small),
      ...(pad === ''
        ? []
        : [text('pad', at(left + wide + 6, top + 7.2), pad.slice(2), type.small, { weight: 'bold' })]),
    ],
    {
      ref: { element: g.element },
      name: `${name}: ${sum}, the ground takes ${say.figure(g.allowable)}${pad}`,
      worst: part > 1 + 1e-9 ? 'danger' : gravest(look.findingsOn(g.element)),
    },
  );
}
