import { message, name, term } from '@cribwright/messages';
import type { Look } from '../look/look.js';
import { at, group, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { margin, type } from '../sheet/sizes.js';
import { table } from '../sheet/table.js';

/** Contacts named in the drawing's table; the words of the drawing name all of them. */
const most = 12;

/** Contact by contact, the load before the loss and after it, the largest change first. */
export function movedLoads(
  look: Look,
  top: number,
): { readonly items: readonly Item[]; readonly bottom: number } {
  const { lost, asBuilt, say } = look;
  if (lost === undefined || asBuilt === undefined) return { items: [], bottom: top };
  const before = new Map(asBuilt.reactions.map((r) => [r.id, r]));
  const after = new Map(lost.reactions.map((r) => [r.id, r]));
  const rows = [...new Set([...before.keys(), ...after.keys()])]
    .map((id) => ({ id, was: before.get(id), now: after.get(id) }))
    .map((r) => ({
      ...r,
      label: r.was?.label ?? r.now?.label,
      change: Math.abs((r.now?.load.high ?? 0) - (r.was?.load.high ?? 0)),
    }))
    .sort((a, b) => b.change - a.change || (a.id < b.id ? -1 : 1));
  const shown = rows.slice(0, most);
  const half = Math.ceil(shown.length / 2);
  const tables = [shown.slice(0, half), shown.slice(half)].map((part, i) =>
    table(
      `moved ${i}`,
      [
        { title: say.message(term('piece.contact')), width: 50 },
        { title: say.message(term('piece.before')), width: 31, align: 'end' },
        { title: say.message(term('piece.after')), width: 35, align: 'end' },
      ],
      part.map(({ label, ...r }) => ({
        key: r.id,
        cells: [
          label === undefined ? r.id : say.words.message(label),
          r.was === undefined ? say.message(term('piece.none')) : say.force(r.was.load),
          r.now === undefined
            ? say.message(term(lost.rests ? 'piece.lost' : 'piece.not-known'))
            : say.force(r.now.load),
        ],
        strong: r.now !== undefined && r.change > 0 && r.now.load.high > (r.was?.load.high ?? 0),
      })),
      margin + i * 118,
      top + 8,
    ),
  );
  const rest = rows.length - shown.length;
  const bottom = Math.max(...tables.map((t) => t.bottom));
  return {
    items: [
      group('moved loads', [
        text('title', at(margin, top + 4), say.message(term('piece.moved-title')), type.label, {
          weight: 'bold',
        }),
        ...tables.map((t) => t.item),
        ...(rest > 0
          ? [
              text(
                'rest',
                at(margin, bottom + 4),
                say.message(message('piece.smaller-changes', { contacts: name(String(rest)) })),
                type.small,
              ),
            ]
          : []),
      ]),
    ],
    bottom: bottom + (rest > 0 ? 6 : 2),
  };
}
