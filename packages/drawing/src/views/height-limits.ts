import type { Crib, PolicyKey } from '@cribwright/engine';
import { heightAxes, high, wide } from '../pieces/height-axes.js';
import { listOf } from '../pieces/support-label.js';
import { at, circle, group, line, polygon, text } from '../scene/draw.js';
import type { Item, Point } from '../scene/scene.js';
import { heading, sheet } from '../sheet/sheet.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { spread } from '../sheet/spread.js';
import { stackHeight } from '../space/crib-solids.js';
import { inch } from '../text/lengths.js';
import { clip } from '../text/wrap.js';
import { describe } from '../words/describe.js';
import { chosenCrib } from './crib.js';
import { headingOf } from './heading-of.js';
import { gravest, type Look } from './look.js';
import type { View } from './view.js';

/** Height against width outside to outside of the contacts: each crib as a point, the policy's limits as lines. */
export const view: View = {
  id: 'height limits',
  order: 70,
  name: 'Heights',
  shows: 'How high each crib stands against its limits on all, some and one of its contacts',
  subject: ['crib'],
  offered: (plan) => plan.cribs.length > 0,
  awaits: (plan) => plan.cribs.length > 0,
  draw: (look) => {
    const title = headingOf(look, 'Heights and their limits');
    const head = heading(title);
    const [left, top] = [margin + 22, head.bottom + 8];
    const cribs = look.plan.cribs.map((crib) => ({
      crib,
      width: crib.timber.length - 2 * crib.overhang,
      height: stackHeight(crib),
    }));
    const mostWidth = Math.max(24 * inch, ...cribs.map((c) => c.width * 1.35));
    const mostHeight = Math.max(60 * inch, ...cribs.map((c) => c.height * 1.15));
    const spot = (width: number, height: number) =>
      at(left + (wide * width) / mostWidth, top + high - (high * height) / mostHeight);
    const chosen = chosenCrib(look);
    const lines = limits(look, spot, mostWidth, mostHeight);
    return sheet({
      choice: { ...look.choice, ...(chosen === undefined ? {} : { subject: chosen.id }) },
      heading: title,
      words: describe({ ...look, things: look.things.filter((t) => t.kind === 'crib') }, title.title),
      body: [
        ...heightAxes(look, left, top, mostWidth, mostHeight),
        ...lines.map((l) => l.item),
        ...points(
          cribs,
          chosen,
          look,
          spot,
          top,
          lines.flatMap((l) => (l.beside === undefined ? [] : [l.beside])),
        ),
      ],
      bottom: top + high + 16,
      legend: [
        { words: 'limit', sign: { kind: 'line', tone: 'danger', dash: 'chain' } },
        { words: 'the crib asked for', sign: { kind: 'fill', tone: 'timber', fill: 'solid' } },
        { words: 'its own limit', sign: { kind: 'line', tone: 'danger' } },
        { words: 'unsafe', sign: { kind: 'badge', level: 'danger' } },
      ],
      display: look.plan.display,
    });
  },
};

const ratios: readonly (readonly [PolicyKey, string])[] = [
  ['height ratio all contacts', 'all contacts'],
  ['height ratio some contacts', 'some contacts'],
  ['height ratio one contact', 'one contact'],
];

/** What is written in the margin, at the height of what it names. */
interface Beside {
  readonly y: number;
  readonly words: string;
}

/** The policy's limits as lines through nothing; one that leaves the chart at the right is named in the margin. */
function limits(
  look: Look,
  spot: (width: number, height: number) => Point,
  mostWidth: number,
  mostHeight: number,
): readonly { readonly item: Item; readonly beside: Beside | undefined }[] {
  return ratios.flatMap(([key, words]) => {
    const limit = look.plan.policy.limits[key];
    if (typeof limit.value !== 'number' || limit.value <= 0) return [];
    const width = Math.min(mostWidth, mostHeight / limit.value);
    const end = spot(width, width * limit.value);
    const top = width < mostWidth;
    const label = `${words}: ${limit.value} × width`;
    return [
      {
        beside: top ? undefined : { y: end.y, words: label },
        item: group(
          key,
          [
            line('limit', 'danger', spot(0, 0), end, { dash: 'chain', width: 0.4 }),
            ...(top
              ? [
                  text('words', at(end.x, end.y - 1.5), label, type.small, {
                    anchor: 'middle',
                    tone: 'danger',
                  }),
                ]
              : []),
          ],
          { ref: limit.ref, name: `limit with ${words} loaded: ${limit.value} times the width` },
        ),
      },
    ];
  });
}

const rowHigh = 4.6;

/** A crib with its width outside to outside of the contacts and its height, m. */
interface Sized {
  readonly crib: Crib;
  readonly width: number;
  readonly height: number;
}

function points(
  cribs: readonly Sized[],
  chosen: Crib | undefined,
  look: Look,
  spot: (width: number, height: number) => Point,
  top: number,
  besides: readonly Beside[],
): readonly Item[] {
  const named = new Map<string, { place: Point; own: typeof cribs }>();
  for (const c of cribs) {
    const place = spot(c.width, c.height);
    // Two of one size may have different limits: what holds for one of them is never said of the other.
    const limit = look.support(c.crib.id)?.figures.heightLimit?.value?.low;
    const key = `${place.x.toFixed(1)} ${place.y.toFixed(1)} ${limit?.toFixed(4) ?? 'not known'}`;
    named.set(key, { place, own: [...(named.get(key)?.own ?? []), c] });
  }
  // The unsafe ones are named first, where not all can be, and drawn last, so that no other covers them.
  const list = [...named.values()].sort(
    (a, b) => Number(anyOver(b.own, look)) - Number(anyOver(a.own, look)),
  );
  const left = margin + 22 + wide + 8;
  const room = sheetWidth - margin - left;
  // Only so many can be named in the margin; the others keep their names for the pointer and for readers.
  const most = Math.floor(high / rowHigh) - besides.length;
  const places = spread(
    [...list.slice(0, most).map((l) => l.place.y), ...besides.map((b) => b.y)].map((y) => ({
      at: y,
      room: rowHigh,
    })),
    top,
    top + high,
  );
  const margins = besides.map((b, i) => {
    const y = places?.[Math.min(list.length, most) + i] ?? b.y;
    return group(`limit words ${i}`, [
      line('leader', 'danger', at(margin + 22 + wide, b.y), at(left - 1, y), { width: 0.12 }),
      text('words', at(left, y + 1), clip(b.words, room, type.small), type.small, { tone: 'danger' }),
    ]);
  });
  return [
    ...margins,
    ...list
      .map(({ place, own }, i) => {
        const lead = own.find((o) => o.crib === chosen) ?? own[0];
        if (lead === undefined) return group(`point ${i}`, []);
        const support = look.support(lead.crib.id);
        const limit = support?.figures.heightLimit?.value?.low;
        const over = isOver(lead, look);
        const y = i < most ? places?.[i] : undefined;
        const ownLimit = limit === undefined ? undefined : spot(lead.width, limit);
        const words = `${listOf(own.map((o) => o.crib.name))}: ${look.say.short(lead.height)}${limit === undefined ? ', limit not known' : `, limit ${look.say.figure(support?.figures.heightLimit)}`}`;
        const tone = over ? 'danger' : 'label';
        const weight = over ? 'bold' : 'normal';
        return group(
          `point ${lead.crib.id}`,
          [
            ...(y === undefined
              ? []
              : [
                  line('leader', 'dimension', place, at(left - 1, y), { width: 0.1 }),
                  text('words', at(left, y + 1), clip(words, room, type.small, weight), type.small, {
                    weight,
                    tone,
                  }),
                ]),
            ...(ownLimit === undefined
              ? []
              : [
                  line(
                    'own limit',
                    'danger',
                    at(ownLimit.x - 3, ownLimit.y),
                    at(ownLimit.x + 3, ownLimit.y),
                    {
                      width: 0.7,
                    },
                  ),
                  line('room', over ? 'danger' : 'good', place, ownLimit, { width: 0.3, head: 'arrow' }),
                ]),
            over
              ? polygon(
                  'mark',
                  'danger',
                  [at(place.x, place.y - 2), at(place.x + 2, place.y + 1.6), at(place.x - 2, place.y + 1.6)],
                  'solid',
                )
              : circle('mark', 'timber', place, 1.6, own.some((o) => o.crib === chosen) ? 'solid' : 'light'),
          ],
          {
            ref: lead.crib.ref,
            name: `crib ${words}`,
            worst: over ? 'danger' : gravest(look.findingsOn(lead.crib.id)),
          },
        );
      })
      .reverse(),
  ];
}

const anyOver = (own: readonly Sized[], look: Look): boolean => own.some((c) => isOver(c, look));

function isOver({ crib, height }: Sized, look: Look): boolean {
  const limit = look.support(crib.id)?.figures.heightLimit?.value?.low;
  return limit !== undefined && height > limit * (1 + 1e-9);
}
