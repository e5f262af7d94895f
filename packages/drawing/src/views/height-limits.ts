import { type Message, message, name, term } from '@cribwright/messages';
import { type PolicyKey, place } from '@cribwright/model';
import { inch } from '@cribwright/units';
import { headingOf } from '../look/heading-of.js';
import type { Look } from '../look/look.js';
import { heightAxes, high, wide } from '../pieces/height-axes.js';
import { type Beside, heightPoints } from '../pieces/height-points.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, type } from '../sheet/sizes.js';
import { describe } from '../words/describe.js';
import { chosenCrib } from './crib.js';
import type { View } from './view.js';

/** Height against width outside to outside of the contacts: each crib as a point, the policy's limits as lines. */
export const view: View = {
  id: 'height limits',
  order: 70,
  name: term('view.heights'),
  shows: term('view.heights-shows'),
  subject: ['crib'],
  offered: (plan) => plan.cribs.length > 0,
  awaits: (plan) => plan.cribs.length > 0,
  draw: (look) => {
    const title = headingOf(look, term('view.heights-title'));
    const head = heading(title);
    const [left, top] = [margin + 22, head.bottom + 8];
    const cribs = place(look.plan).cribs.all;
    const mostWidth = Math.max(24 * inch, ...cribs.map((c) => c.width * 1.35));
    const mostHeight = Math.max(60 * inch, ...cribs.map((c) => c.height * 1.15));
    const spot = (width: number, height: number) =>
      at(left + (wide * width) / mostWidth, top + high - (high * height) / mostHeight);
    const chosen = chosenCrib(look);
    const lines = limits(look, spot, mostWidth, mostHeight);
    return sheet({
      choice: { ...look.choice, ...(chosen === undefined ? {} : { subject: chosen.crib.id }) },
      heading: title,
      spoken: describe({ ...look, things: look.things.filter((t) => t.kind === 'crib') }, title.title),
      body: [
        ...heightAxes(look, left, top, mostWidth, mostHeight),
        ...lines.map((l) => l.item),
        ...heightPoints(
          cribs,
          chosen?.crib,
          look,
          spot,
          top,
          lines.flatMap((l) => (l.beside === undefined ? [] : [l.beside])),
        ),
      ],
      bottom: top + high + 16,
      legend: [
        {
          words: look.say.message(term('view.limit')),
          sign: { kind: 'line', tone: 'danger', dash: 'dashed' },
        },
        {
          words: look.say.message(term('view.chosen-crib')),
          sign: { kind: 'fill', tone: 'timber', fill: 'solid' },
        },
        { words: look.say.message(term('view.own-limit')), sign: { kind: 'line', tone: 'danger' } },
        { words: look.say.message(term('view.unsafe-sign')), sign: { kind: 'badge', level: 'danger' } },
      ],
      words: look.say.words,
    });
  },
};

const ratios: readonly (readonly [PolicyKey, Message])[] = [
  ['height ratio all contacts', term('view.all-contacts')],
  ['height ratio some contacts', term('view.some-contacts')],
  ['height ratio one contact', term('view.one-contact')],
];

/** The policy's limits as lines through nothing; one that leaves the chart at the right is named in the margin. */
function limits(
  look: Look,
  spot: (width: number, height: number) => SheetPoint,
  mostWidth: number,
  mostHeight: number,
): readonly { readonly item: Item; readonly beside: Beside | undefined }[] {
  return ratios.flatMap(([key, contacts]) => {
    const limit = look.plan.policy.limits[key];
    if (typeof limit.value !== 'number' || limit.value <= 0) return [];
    const width = Math.min(mostWidth, mostHeight / limit.value);
    const end = spot(width, width * limit.value);
    const top = width < mostWidth;
    const holes = { contacts, ratio: name(String(limit.value)) };
    const label = look.say.message(message('view.ratio-limit', holes));
    return [
      {
        beside: top ? undefined : { y: end.y, words: label },
        item: group(
          key,
          [
            line('limit', 'danger', spot(0, 0), end, { dash: 'dashed', width: 0.4 }),
            ...(top
              ? [
                  text('words', at(end.x, end.y - 1.5), label, type.small, {
                    anchor: 'middle',
                    tone: 'danger',
                  }),
                ]
              : []),
          ],
          { ref: limit.ref, name: look.say.message(message('view.ratio-limit-name', holes)) },
        ),
      },
    ];
  });
}
