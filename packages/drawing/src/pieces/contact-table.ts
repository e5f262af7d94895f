import type { ContactResult } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Crib } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { at, group, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';
import { type Row, table } from '../sheet/table.js';
import type { Say } from '../text/say.js';
import { useBar } from './use-bar.js';
import { useLimit } from './use-level.js';

/** A gap below nothing says how much too high the crib stands. */
const factWords = (figure: Figure, say: Say): string =>
  figure.key === 'gap' && figure.value !== undefined && figure.value.high < 0
    ? say.message(message('piece.too-high', { amount: name(say.short(-figure.value.low, 'up')) }))
    : `${say.words.label(figure)} ${say.figure(figure)}`;

/** Each contact in numbers: what it meets, its load at the moment, what it may carry, and how far that is used. */
export function contactTable(
  crib: Crib,
  look: Look,
  field: { readonly left: number; readonly top: number },
): { readonly item: Item; readonly bottom: number } {
  const support = look.support(crib.id);
  const contacts = support?.contacts ?? [];
  const { say } = look;
  const moment = look.lost ?? (look.choice.stage === undefined ? undefined : look.asBuilt);
  const now = (contact: ContactResult) => {
    const reaction = moment?.reactions.find((r) => r.id === `${crib.id}#${contact.number}`);
    return reaction === undefined ? say.message(term('piece.none')) : say.force(reaction.load);
  };
  const columns = [
    { title: say.message(term('piece.contact')), width: 16 },
    { title: say.message(term('piece.meets')), width: 22 },
    ...(moment === undefined ? [] : [{ title: say.message(term('piece.now')), width: 32 }]),
    { title: say.message(term(moment === undefined ? 'piece.load-at-most' : 'piece.worst')), width: 30 },
    { title: say.message(term('piece.capacity')), width: 20 },
    { title: say.message(term('piece.use')), width: 22 },
  ];
  const rows = contacts.map(
    (c): Row => ({
      key: String(c.number),
      cells: [
        String(c.number),
        c.meets?.part ?? say.message(term('piece.nothing')),
        ...(moment === undefined ? [] : [now(c)]),
        c.loaded ? say.figure(c.load) : say.message(term('piece.not-counted')),
        say.figure(c.capacity),
        c.loaded ? say.figure(c.use) : '',
      ],
    }),
  );
  // Nothing is known of a contact whose loads were not worked out: that is said, and not left blank.
  const none = { key: 'none', cells: ['', say.message(term('piece.not-worked-out'))] };
  const shown = rows.length === 0 ? [none] : rows;
  const grid = table('contact table', columns, shown, field.left, field.top);
  const barLeft = field.left + columns.reduce((sum, c) => sum + c.width, 0);
  const bars = contacts.flatMap((c, i) =>
    c.loaded
      ? [useBar(`bar ${c.number}`, barLeft, grid.rowAt(i) + 0.4, 20, 2.2, c.use, useLimit(look.plan))]
      : [],
  );
  const facts = (['height', 'heightLimit', 'width', 'gap', 'load', 'capacity', 'use'] as const).flatMap(
    (key) => {
      const figure = support?.figures[key];
      return figure === undefined ? [] : [factWords(figure, say)];
    },
  );
  const size = type.dimension;
  const lines = facts.map((words, i) =>
    text(`fact ${i}`, at(field.left + (i % 2) * 72, grid.bottom + 5 + Math.floor(i / 2) * 4.2), words, size),
  );
  return {
    item: group('contacts in numbers', [grid.item, ...bars, ...lines]),
    bottom: grid.bottom + 5 + Math.ceil(facts.length / 2) * 4.2,
  };
}
