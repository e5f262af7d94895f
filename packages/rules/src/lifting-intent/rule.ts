import type { Workings } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
import { calculation, message, name, quantity, shown, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { computed, exactly, given } from '@cribwright/model';
import { force, over, plus, share, times } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Up to this share of the weight is a snug set, not a lift. Common practice, no source. */
const snug = 0.05;

function upwardOf(vehicle: Vehicle, w: Workings): readonly Figure[] {
  const cribs = w.plan.cribs
    .filter((c) => (c.wedges?.preload ?? 0) > 0 && c.captures.some((k) => k.vehicle === vehicle.id))
    .map((c) =>
      given(
        force('preload', message('figure.of-crib', { crib: name(c.name) }), 'up', {
          ref: { element: c.id, property: 'wedges' },
        }),
        exactly(c.wedges?.preload ?? 0),
        { kind: 'stated' },
      ),
    );
  const struts = w
    .struts()
    .filter((s) => s.strut.preload > 0 && s.strut.head.vehicle === vehicle.id)
    .map((s) => {
      const preload = given(
        force('preload', message('figure.of-strut', { strut: name(s.strut.name) }), 'up', {
          ref: { element: s.strut.id, property: 'preload' },
        }),
        exactly(s.strut.preload),
        { kind: 'stated' },
      );
      const rise = s.angle.value;
      const value = rise === undefined ? undefined : { low: Math.sin(rise.low), high: Math.sin(rise.high) };
      return computed(
        force('upward', message('figure.strut-upward-part', { strut: name(s.strut.name) }), 'up'),
        times(preload.value, value),
        '{preload} × sin({angle})',
        { preload, angle: s.angle },
      );
    });
  return [...cribs, ...struts];
}

function lifts(vehicle: Vehicle, w: Workings): RuleFinding | undefined {
  const { plan } = w;
  const parts = upwardOf(vehicle, w);
  const first = parts[0];
  if (plan.lifts)
    return first !== undefined && !plan.cribs.some((c) => c.captures.some((k) => k.vehicle === vehicle.id))
      ? {
          subject: { element: vehicle.id },
          at: plan.ref,
          message: message('lifting-intent.follow', { vehicle: name(vehicle.name) }),
        }
      : undefined;
  if (first === undefined) return undefined;
  const upward = computed(
    force('upward', term('figure.upward-in-all'), 'up'),
    parts.map((p) => p.value).reduce(plus),
    parts.map((_, i) => `{p${i}}`).join(' + '),
    Object.fromEntries(parts.map((p, i) => [`p${i}`, p])),
  );
  const weight = w.masses().get(vehicle.id)?.weight;
  if (weight === undefined) return undefined;
  const part = computed(
    share('share', term('figure.share-of-the-weight'), 'up'),
    over(upward.value, weight.value),
    '{upward} ÷ {weight}',
    { upward, weight },
  );
  if (!exceeds(part.value?.high ?? Number.POSITIVE_INFINITY, snug)) return undefined;
  return {
    subject: { element: vehicle.id },
    at: first.ref ?? { element: vehicle.id },
    message: message('lifting-intent.lifts', {
      vehicle: name(vehicle.name),
      upward: shown(upward),
      sum: calculation(upward),
      share: shown(part),
      limit: quantity('share', snug, 'down'),
    }),
    figures: [upward, weight, part],
  };
}

export const rule: Rule = {
  id: 'lifting-intent',
  title: term('lifting-intent.title'),
  family: 'whole system',
  severity: 'warning',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('lifting-intent.protects'),
  sources: [practice],
  compares: ['share'],
  check: (w) => w.plan.vehicles.flatMap((v) => lifts(v, w) ?? []),
};
