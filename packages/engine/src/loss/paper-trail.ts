import type { Figure } from '@cribwright/messages';
import {
  type List,
  type Message,
  message,
  type Name,
  type Phrase,
  term,
  name as verbatim,
} from '@cribwright/messages';
import type { ElementId } from '@cribwright/model';
import { computed, exactly, given, toPlan, toVehicle } from '@cribwright/model';
import { force, length } from '@cribwright/model/internal';
import type { PaperTrail } from '../analysis/analysis.js';
import { at } from '../resting/at.js';
import type { ScaledSystem } from '../resting/scaled-system.js';
import type { Rest } from '../resting/system.js';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { bodyChecks, feet } from './body-checks.js';
import { byBalance } from './by-balance.js';
import type { Component, JointCorner } from './components.js';
import { stiffnessFigure } from './stiffness-figure.js';

type Resting = Extract<Rest, { readonly kind: 'rests' }>;

/** One answer, with all that it takes to check it by hand. */
export interface Worked {
  readonly component: Component;
  readonly corner: JointCorner;
  readonly scaled: ScaledSystem;
  readonly rest: Resting;
  /** Closing of each point when it was placed, m. */
  readonly placedAt: Float64Array;
  readonly there: readonly boolean[];
}

const settling = (key: string, label: Phrase, meters: number): Figure =>
  byBalance(length(key, label, 'nearest'), exactly(meters));

/**
 * The sum behind each load of one case, at one corner of the ranges, in steps that a person can follow: a rigid
 * body settles like a plank, so that three numbers give its settling at any place; each support pushes back with
 * stiffness × settling there; and the loads add up to the weight, at its center of gravity.
 */
export function paperTrail(w: SupportWorkings, worked: Worked, corner: List | undefined): PaperTrail {
  const planks = new Map(
    worked.component.bodies.map((b, i): [ElementId, Plank] => [b.id, plankOf(w, worked, b.id, b.vehicle, i)]),
  );
  const loads = worked.component.points.flatMap((p, i) =>
    worked.there[i] === true ? [{ p, i, figure: loadFigure(w, worked, planks, p, i) }] : [],
  );
  const checks = worked.component.bodies.flatMap((b, i) => {
    const own = loads.filter(({ p }) => p.upper === b.id || p.lower === b.id);
    return bodyChecks(worked, b.id, i, own);
  });
  return {
    corner,
    settling: [...planks.values()].flatMap((p) => [p.front, p.rear, p.side]),
    loads: Object.fromEntries(loads.map(({ p, figure }) => [p.id, figure])),
    checks,
  };
}

interface Plank {
  readonly vehicle: ElementId;
  readonly name: Message | Name;
  readonly from: number;
  readonly front: Figure;
  readonly rear: Figure;
  readonly side: Figure;
  readonly length: Figure;
  readonly half: Figure;
}

function plankOf(
  w: SupportWorkings,
  { scaled, rest, component }: Worked,
  body: ElementId,
  id: ElementId,
  b: number,
): Plank {
  const vehicle = w.vehicles.get(id) ?? {
    at: { x: 0, y: 0 },
    heading: 0,
    length: 1,
    width: 1,
    cab: undefined,
  };
  const name = component.bodies[b]?.name ?? verbatim(body);
  const called = { body: name };
  const cab = body === id ? undefined : vehicle.cab;
  const [from, to, half] = [cab?.from ?? 0, cab?.to ?? vehicle.length, vehicle.width / 2];
  const frame = scaled.frames[b] ?? { x: 0, y: 0, reach: 1 };
  const sinks = (x: number, y: number): number => {
    const p = toPlan(vehicle, { x, y });
    return (
      scaled.length *
      (at(rest.q, 3 * b) +
        (at(rest.q, 3 * b + 1) * (p.x - frame.x)) / frame.reach +
        (at(rest.q, 3 * b + 2) * (p.y - frame.y)) / frame.reach)
    );
  };
  const front = sinks(from, 0);
  return {
    vehicle: id,
    name,
    from,
    front: settling('front', message('figure.settling-front', called), front),
    rear: settling('rear', message('figure.settling-rear', called), sinks(to, 0)),
    side: settling('side', message('figure.settling-side', called), sinks(from, half) - front),
    length: feet('length', message('figure.length-of', called), to - from),
    half: feet('half', message('figure.half-width-of', called), half),
  };
}

/** front + (rear − front) × place ÷ length + side × place ÷ half width. */
function settlesAt(w: SupportWorkings, plank: Plank, p: SupportPoint): Figure {
  const vehicle = w.vehicles.get(plank.vehicle);
  const local = vehicle === undefined ? p.at : toVehicle(vehicle, p.at);
  const back = feet('back', term('figure.back-from-its-front'), local.x - plank.from);
  const across = feet('across', term('figure.toward-the-passenger-side'), local.y);
  const { front, rear, side, length: whole, half } = plank;
  const value = (f: Figure) => f.value?.high ?? Number.NaN;
  return computed(
    length('settles', message('figure.settling-there', { body: plank.name }), 'nearest'),
    exactly(
      value(front) +
        ((value(rear) - value(front)) * value(back)) / value(whole) +
        (value(side) * value(across)) / value(half),
    ),
    '{front} + ({rear} − {front}) × {back} ÷ {whole} + {side} × {across} ÷ {half}',
    { front, rear, back, whole, side, across, half },
  );
}

/** preload + stiffness × (settling above − settling below − what had settled when it was placed). */
function loadFigure(
  w: SupportWorkings,
  { rest, placedAt }: Worked,
  planks: ReadonlyMap<ElementId, Plank>,
  p: SupportPoint,
  i: number,
): Figure {
  const above = planks.get(p.upper);
  const below = planks.get(p.lower);
  const head = force('load', message('figure.load-on', { place: p.label }), 'up');
  const value = exactly(at(rest.forces, i));
  if (above === undefined) return byBalance(head, value);
  const stiffness = stiffnessFigure(p, w);
  const inputs: Record<string, Figure> = { stiffness, above: settlesAt(w, above, p) };
  let closing = '{above}';
  if (below !== undefined) {
    inputs.below = settlesAt(w, below, p);
    closing += ' − {below}';
  }
  if (!p.original) {
    inputs.placed = settling('placed', term('figure.settled-when-it-was-placed'), at(placedAt, i));
    closing += ' − {placed}';
  }
  let formula = `{stiffness} × ${closing}`;
  if (closing.includes('−')) {
    // The difference of two large settlings is small: it is printed too, or the product would not come out on paper.
    const { stiffness: _, ...settlings } = inputs;
    inputs.closing = computed(
      length('closing', term('figure.what-it-closes'), 'nearest'),
      exactly(at(rest.closings, i) - at(placedAt, i)),
      closing,
      settlings,
    );
    formula = `{stiffness} × {closing} (= ${closing})`;
  }
  if (p.preload > 0) {
    inputs.preload = given(force('preload', term('figure.preload'), 'nearest'), exactly(p.preload), {
      kind: 'stated',
    });
    formula = `{preload} + ${formula}`;
  }
  const pulls = p.preload + p.stiffness * (at(rest.closings, i) - at(placedAt, i)) < -1e-3;
  return computed(
    head,
    value,
    // A contact does not pull.
    pulls ? `max(0, ${formula})` : formula,
    inputs,
  );
}
