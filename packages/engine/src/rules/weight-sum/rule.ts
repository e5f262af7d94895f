import { calculation, message, name, shown, term } from '@cribwright/messages';
import { computed, given } from '../../figure/compute.js';
import { force } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { add, exactly } from '../../model/interval.js';
import type { Vehicle } from '../../model/vehicle.js';
import { emptyCarriers } from '../../plausibility/loaded-axles.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  differ:
    '{vehicle} weighs {stated} empty as written, but what it stands on carries {sum} ({parts}). One of them is wrong. The plan goes by the written weight.',
  'less-than-axles':
    '{vehicle} weighs {stated} empty as written, but its axles alone carry {sum} ({parts}). One of them is wrong. The plan goes by the written weight.',
  'fix-leave-out': 'Leave the weight out, and go by what {vehicle} stands on',
  'carried-here': 'This carries {load} empty.',
} as const;
const say = messages('weight-sum', words);

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
    {
      kind: 'stated',
    },
  );
  const parts = carriers.map((c) =>
    given(
      force('carried', message('figure.empty', { carrier: name(c.name) }), 'nearest', { ref: c.ref }),
      c.empty,
      vehicle.source,
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
      message: say(partial ? 'less-than-axles' : 'differ', {
        vehicle: vehicle.name,
        stated: shown(stated),
        sum: shown(total),
        parts: calculation(total),
      }),
      figures: [stated, total],
      fixes: partial
        ? []
        : [
            {
              title: say('fix-leave-out', { vehicle: vehicle.name }),
              edits: [{ kind: 'remove', at: ref }],
              safe: false,
            },
          ],
      related: carriers.map((c, i) => ({
        at: c.ref,
        message: say('carried-here', { load: parts[i] === undefined ? '' : shown(parts[i]) }),
      })),
    },
  ];
}

export const rule: Rule = {
  id: 'weight-sum',
  title: 'Weights that do not add up',
  family: 'plausibility',
  severity: 'warning',
  protects: 'A weight that was typed wrong makes every load in the plan wrong.',
  sources: [practice],
  compares: ['statedWeight', 'carriedSum'],
  words,
  check: (w: Workings) => w.plan.vehicles.flatMap((v) => differs(v)),
};
