import type { Figure } from '@cribwright/messages';
import { message, name, term } from '@cribwright/messages';
import type { Tie } from '@cribwright/model';
import { computed, exactly, given, type Interval, measured } from '@cribwright/model';
import { force, ratio } from '@cribwright/model/internal';
import { footFriction } from '../strut/foot-friction.js';
import type { StrutWorking } from '../strut/strut-working.js';
import { gripOn, riseOf, type TieWorking } from '../strut/tie-working.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import { unknownLoad, useOf } from './crib-use.js';

/**
 * What a tie has to take from a strut: the thrust at the base that friction does not hold, T = S (cos θ − μ sin θ),
 * over the share of the tie's pull that acts against it.
 */
export function footTension(s: StrutWorking, tie: Tie, w: LoadWorkings): Figure {
  const load = w.loads().get(s.strut.id)?.load ?? unknownLoad();
  const friction = footFriction(s.strut, w.plan);
  const grip = measured(
    ratio('grip', term('figure.share-of-the-pull-along-the-thrust'), 'down'),
    exactly(gripOn(tie, s.strut, w.plan)),
    riseOf(tie, s.strut, w.plan) > 0
      ? term('figure.between-the-strap-and-the-way-the')
      : term('figure.between-the-strap-and-the-way-the-2'),
  );
  return computed(
    force('load', message('figure.pull-from-strut', { strut: name(s.strut.name) }), 'up', {
      governs: load.governs,
    }),
    tension(load.value, s.angle.value, friction.value, grip.value),
    '{load} × (cos({angle}) − {friction} × sin({angle})) ÷ {grip}',
    { load, angle: s.angle, friction, grip },
  );
}

function tension(
  load: Interval | undefined,
  angle: Interval | undefined,
  friction: Interval | undefined,
  grip: Interval | undefined,
): Interval | undefined {
  if (load === undefined || angle === undefined || friction === undefined || grip === undefined)
    return undefined;
  if (!(grip.low > 0)) return undefined;
  const at = (s: number, t: number) => (s * Math.max(0, Math.cos(t) - friction.low * Math.sin(t))) / grip.low;
  return { low: at(load.low, angle.high), high: at(load.high, angle.low) };
}

/**
 * The greatest pull on a tie over the bases that it holds, and what the model in space puts on it, with its pretension,
 * beside its rating.
 */
export function tieUse(t: TieWorking, w: LoadWorkings): { readonly load: Figure; readonly use: Figure } {
  const pulls = [t.tie.from, t.tie.to].flatMap((end) => {
    const s = end.kind === 'strut base' ? w.struts().find((k) => k.strut.id === end.strut) : undefined;
    return s === undefined ? [] : [footTension(s, t.tie, w)];
  });
  const held = w.loads().get(t.tie.id)?.load;
  const load = total(held === undefined ? pulls : [...pulls, held], t.tie);
  return { load, use: useOf(load, t.capacity) };
}

function total(pulls: readonly Figure[], tie: Tie): Figure {
  const pretension = given(
    force('pretension', term('figure.pretension'), 'up', { ref: { element: tie.id, property: 'tension' } }),
    exactly(tie.pretension),
    { kind: 'stated' },
  );
  const worst = pulls.reduce<Figure | undefined>(
    (most, next) =>
      most === undefined ||
      next.value === undefined ||
      next.value.high > (most.value?.high ?? Number.POSITIVE_INFINITY)
        ? next
        : most,
    undefined,
  );
  const head = force('load', term('figure.pull'), 'up', { governs: worst?.governs });
  if (worst === undefined) return computed(head, pretension.value, '{pretension}', { pretension });
  // The strap is either pulled up by hand or pulled by the base: the larger of the two, not their sum.
  const value =
    worst.value === undefined
      ? undefined
      : {
          low: Math.max(worst.value.low, tie.pretension),
          high: Math.max(worst.value.high, tie.pretension),
        };
  return tie.pretension > 0
    ? computed(head, value, 'max({pretension}, {pull})', { pretension, pull: worst })
    : computed(head, value, '{pull}', { pull: worst });
}
