import { computed, given } from '../figure/compute.js';
import type { Figure } from '../figure/figure.js';
import { minus, plus } from '../figure/interval-math.js';
import { type Display, length } from '../figure/units-of.js';
import { exactly, hull, type Interval } from '../model/interval.js';
import type { Plan } from '../model/plan.js';
import type { Crib } from '../model/support.js';
import type { Contact } from '../placed/contacts.js';
import { underside } from '../placed/underside.js';

/** What a crib or step chock stands on, above the ground; a pad said to be under it counts too. */
export const baseHeight = ({ id, standsOn }: Pick<Crib, 'id' | 'standsOn'>, pads: Plan['pads']): Interval => {
  switch (standsOn.kind) {
    case 'ground':
      return exactly(pads.find((p) => p.under === id)?.thickness ?? 0);
    case 'vehicle':
      return standsOn.height;
    case 'pad':
      return exactly(pads.find((p) => p.id === standsOn.pad)?.thickness ?? 0);
  }
};

export const baseFigure = (crib: Crib, plan: Plan): Figure =>
  given(
    length(plan.display, 'base', 'what it stands on', 'nearest', {
      ref: { element: crib.id, property: 'stands on' },
    }),
    baseHeight(crib, plan.pads),
    { kind: 'stated' },
  );

/** From what the crib stands on, its courses and shims up to the captured part. */
export function gapFigure(
  crib: Crib,
  contacts: readonly Contact[],
  height: Figure,
  base: Figure,
  display: Display,
): Figure {
  const met = contacts.flatMap((c) => (c.given[0] === undefined ? [] : [c.meets ?? c.given[0]]));
  const heights = met.map((m) => underside(m.vehicle, m.part, m.place.at));
  const first = met[0];
  const part = given(
    length(display, 'partHeight', `underside of ${first?.part.name ?? 'the captured part'}`, 'nearest', {
      ref: first?.part.ref,
    }),
    heights.length > 0 ? heights.reduce(hull) : undefined,
    first?.vehicle.source ?? { kind: 'unknown' },
  );
  const shims = given(
    length(display, 'shims', 'shims', 'down', {
      ref: { element: crib.id, property: 'shims' },
    }),
    exactly(crib.shims),
    { kind: 'stated' },
  );
  // Terms that are nothing only clutter the sum.
  const terms = Object.entries({ base, height, shims }).filter(([, f]) => f.value?.high !== 0);
  return computed(
    length(display, 'gap', 'gap to close', 'up', { ref: { element: crib.id, property: 'courses' } }),
    minus(part.value, plus(plus(base.value, height.value), shims.value)),
    ['{part}', ...terms.map(([name]) => `{${name}}`)].join(' − '),
    { part, ...Object.fromEntries(terms) },
  );
}

/** What the stated wedges close; nothing without any. */
export function closesFigure(crib: Crib, display: Display): Figure {
  const head = length(display, 'closes', 'gap that the wedges close', 'down', {
    ref: { element: crib.id, property: 'wedges' },
  });
  if (crib.wedges === undefined || crib.wedges.pairs <= 0) return given(head, exactly(0), { kind: 'stated' });
  return given(head, crib.wedges.travel, { kind: 'stated' });
}
