import { message, name } from '@cribwright/messages';
import type { Crib, PlacedCrib } from '@cribwright/model';
import { gravest, type Look } from '../look/look.js';
import { at, circle, group, line, polygon, text } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { margin, sheetWidth, type } from '../sheet/sizes.js';
import { spread } from '../sheet/spread.js';
import { textWidth } from '../text/font-metrics.js';
import { clip } from '../text/wrap.js';
import { high, wide } from './height-axes.js';
import { listOf } from './support-label.js';

/** What is written in the margin, at the height of what it names. */
export interface Beside {
  readonly y: number;
  readonly words: string;
}

const rowHigh = 4.6;

/** Each crib as a point, with its own limit and how far that is, named in the margin beside the chart. */
export function heightPoints(
  cribs: readonly PlacedCrib[],
  chosen: Crib | undefined,
  look: Look,
  spot: (width: number, height: number) => SheetPoint,
  top: number,
  besides: readonly Beside[],
): readonly Item[] {
  const named = new Map<string, { place: SheetPoint; own: typeof cribs }>();
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
        const tone = over ? 'danger' : 'label';
        const weight = over ? 'bold' : 'normal';
        const naming = (names: number): string => {
          const holes = {
            cribs: name(
              listOf(
                own.map((o) => o.crib.name),
                look.say,
                names,
              ),
            ),
            height: name(look.say.short(lead.height, 'up')),
          };
          return look.say.message(
            limit === undefined
              ? message('piece.height-limit-not-known', holes)
              : message('piece.height-and-limit', {
                  ...holes,
                  limit: name(look.say.figure(support?.figures.heightLimit)),
                }),
          );
        };
        // The height and its limit come after the names: fewer names are written where they would not fit.
        const words =
          [4, 3, 2].map(naming).find((t) => textWidth(t, type.small, weight) <= room) ?? naming(1);
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
            name: look.say.message(message('piece.crib-words', { words: name(words) })),
            worst: over ? 'danger' : gravest(look.findingsOn(lead.crib.id)),
          },
        );
      })
      .reverse(),
  ];
}

const anyOver = (own: readonly PlacedCrib[], look: Look): boolean => own.some((c) => isOver(c, look));

function isOver({ crib, height }: PlacedCrib, look: Look): boolean {
  const limit = look.support(crib.id)?.figures.heightLimit?.value?.low;
  return limit !== undefined && height > limit * (1 + 1e-9);
}
