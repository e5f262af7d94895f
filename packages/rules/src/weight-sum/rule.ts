import type { Workings } from '@cribwright/engine';
import { emptyCarriers } from '@cribwright/engine/internal';
import { calculation, message, name, shown, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { add, computed, exactly, given } from '@cribwright/model';
import { force } from '@cribwright/model/internal';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Scales and makers' sheets differ by this much without anyone being wrong. */
const SLACK = 0.02;

/** A semi-trailer's axles carry only part of it: without the load on its kingpin the sum must stay below. */
const restsOnAnother = (v: Vehicle): boolean =>
  v.parts.some((p) => p.carries?.down === true && p.carries.emptyLoad === undefined);

function differs(vehicle: Vehicle): readonly RuleFinding[] {
  const { statedWeight } = vehicle;
  const carriers = emptyCarriers(vehicle);
  if (statedWeight === undefined || carriers.length === 0) return [];
  const sum = carriers.map((c) => c.empty).reduce(add, exactly(0));
  const partial = restsOnAnother(vehicle);
  const above = sum.low > statedWeight.high * (1 + SLACK);
  const below = sum.high < statedWeight.low * (1 - SLACK);
  if (!above && (partial || !below)) return [];
  const ref = { element: vehicle.id, property: 'weight' };
  const stated = given(
    force('statedWeight', term('figure.weight-as-written'), 'nearest', { ref }),
    statedWeight,
    vehicle.statedWeightSource ?? { kind: 'stated' },
  );
  const parts = carriers.map((c) =>
    given(
      force('carried', message('figure.empty', { carrier: name(c.name) }), 'nearest', { ref: c.ref }),
      c.empty,
      c.source,
    ),
  );
  const total = computed(
    force('carriedSum', term('figure.what-it-stands-on-carries'), 'nearest'),
    sum,
    parts.map((_, i) => `{p${i}}`).join(' + '),
    Object.fromEntries(parts.map((f, i) => [`p${i}`, f])),
  );
  return [
    {
      subject: { element: vehicle.id },
      at: ref,
      message: message(partial ? 'weight-sum.less-than-axles' : 'weight-sum.differ', {
        vehicle: name(vehicle.name),
        stated: shown(stated),
        sum: shown(total),
        parts: calculation(total),
      }),
      figures: [stated, total],
      fixes: partial
        ? []
        : [
            {
              title: message('weight-sum.fix-leave-out', { vehicle: name(vehicle.name) }),
              edits: [{ kind: 'remove', at: ref }],
              safe: false,
            },
          ],
      related: parts.flatMap((part) =>
        part.ref === undefined
          ? []
          : [{ at: part.ref, message: message('weight-sum.carried-here', { load: shown(part) }) }],
      ),
    },
  ];
}

export const rule: Rule = {
  id: 'weight-sum',
  title: term('weight-sum.title'),
  family: 'plausibility',
  severity: 'warning',
  judges: 'plan',
  protects: term('weight-sum.protects'),
  sources: [practice],
  compares: ['statedWeight', 'carriedSum'],
  check: (w: Workings) => w.plan.vehicles.flatMap((v) => differs(v)),
};
