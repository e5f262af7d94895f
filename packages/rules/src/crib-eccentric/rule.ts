import type { CribWorking } from '@cribwright/engine/internal';
import type { Figure } from '@cribwright/messages';
import { calculation, count, list, message, name, shownBeside, term } from '@cribwright/messages';
import { computed, exactly, measured } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { fromMemory, practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** The middle of the loaded contacts off the crib's middle, and the sixth of the width within which no side lifts. */
function offMiddle(c: CribWorking): RuleFinding | undefined {
  const loaded = c.contacts.filter((k) => k.loaded);
  if (loaded.length === 0 || loaded.length === c.contacts.length) return undefined;
  const middle = (pick: (k: { readonly x: number; readonly y: number }) => number) =>
    loaded.reduce((sum, k) => sum + pick(k), 0) / loaded.length;
  const { widths } = c.placed;
  const along = Math.abs(middle((k) => k.x) - c.crib.at.x);
  const across = Math.abs(middle((k) => k.y) - c.crib.at.y);
  const [off, width] =
    along / widths.lengthwise > across / widths.crosswise
      ? [along, widths.lengthwise]
      : [across, widths.crosswise];
  const offset = measured(
    length('offset', term('figure.middle-of-the-loaded-contacts-off-the'), 'up'),
    exactly(off),
    term('figure.contacts-that-meet-a-part'),
  );
  const kern = kernOf(width);
  if (!exceeds(off, kern.value?.low ?? 0)) return undefined;
  const beside = shownBeside(offset, kern);
  return {
    subject: { element: c.crib.id },
    at: { element: c.crib.id, property: 'captures' },
    message: message('crib-eccentric.one-side', {
      crib: name(c.crib.name),
      off: beside.demand,
      kern: beside.limit,
      sum: calculation(kern),
      loaded: count(loaded.length),
      contacts: list(loaded.map((k) => count(k.number))),
    }),
    figures: [offset, kern, c.capacity],
  };
}

function kernOf(value: number): Figure {
  const width = measured(
    length('width', term('figure.width-outside-to-outside-of-contacts'), 'down'),
    exactly(value),
    term('figure.between-the-outer-faces-of-the-outer'),
  );
  return computed(
    length('kern', term('figure.a-sixth-of-the-width'), 'down'),
    exactly(value / 6),
    '{width} ÷ 6',
    { width },
  );
}

export const rule: Rule = {
  id: 'crib-eccentric',
  title: term('crib-eccentric.title'),
  family: 'timber and cribs',
  severity: 'note',
  judges: 'contact',
  protects: term('crib-eccentric.protects'),
  sources: [
    practice,
    fromMemory('middle-third rule: a base pressed within a sixth of its width off the middle stays closed'),
  ],
  compares: ['offset', 'kern'],
  check: (w) => w.cribs().flatMap((c) => offMiddle(c) ?? []),
};
