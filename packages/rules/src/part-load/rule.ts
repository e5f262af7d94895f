import type { Workings } from '@cribwright/engine';
import {
  cribUse,
  type PartLoad,
  partBearing,
  partLoads,
  partRating,
  sumOfLoads,
} from '@cribwright/engine/internal';
import type { Figure } from '@cribwright/messages';
import { calculation, count, list, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';
import { unknownStrength } from './unknown-strength.js';

const over = (load: Figure, limit: Figure): boolean =>
  exceeds(load.value?.high ?? 0, limit.value?.low ?? Number.POSITIVE_INFINITY);

/** One support against the rating of the part that it bears on. */
function overRated(p: PartLoad, rating: Figure): RuleFinding | undefined {
  const shared = { part: name(p.part.name), vehicle: name(p.vehicle.name), support: p.support };
  const base = { subject: p.subject, at: p.at, figures: [p.load, rating] };
  const related = [{ at: p.part.ref, message: term('part-load.rating-here') }];
  if (p.load.value === undefined)
    return {
      ...base,
      severity: 'warning',
      couldNotRun: true,
      message: message('part-load.unknown', { ...shared, rating: shown(rating) }),
      related,
    };
  if (!over(p.load, rating)) return undefined;
  const beside = shownBeside(p.load, rating);
  return {
    ...base,
    ...(p.load.governs === undefined ? {} : { governs: p.load.governs }),
    message: message('part-load.over-rating', {
      ...shared,
      load: beside.demand,
      rating: beside.limit,
      governs: p.load.governs ?? term('figure.as-built'),
    }),
    related,
  };
}

/**
 * All that bears on one rated part at once: as built, or else each at its worst. The worst of several may not come
 * at once, so that their sum is a warning and never passes for less.
 */
function overRatedTogether(group: readonly PartLoad[], rating: Figure): RuleFinding | undefined {
  const [first] = group;
  if (first === undefined || group.length < 2) return undefined;
  const sums = {
    asBuilt: sumOfLoads(
      'asBuilt',
      group.map((p) => p.asBuilt),
    ),
    atWorst: sumOfLoads(
      'load',
      group.map((p) => p.load),
    ),
  };
  const asBuilt = over(sums.asBuilt, rating);
  if (!asBuilt && !over(sums.atWorst, rating)) return undefined;
  const together = asBuilt ? sums.asBuilt : sums.atWorst;
  const beside = shownBeside(together, rating);
  return {
    subject: first.subject,
    at: first.at,
    ...(asBuilt ? {} : { severity: 'warning' }),
    message: message(asBuilt ? 'part-load.over-together' : 'part-load.over-at-worst', {
      part: name(first.part.name),
      vehicle: name(first.vehicle.name),
      supports: list(
        group.map((p) => p.support),
        'and',
      ),
      load: beside.demand,
      rating: beside.limit,
    }),
    figures: [together, rating],
    related: [{ at: first.part.ref, message: term('part-load.rating-here') }],
  };
}

function rated(w: Workings): readonly RuleFinding[] {
  const groups = new Map<string, PartLoad[]>();
  for (const p of partLoads(w)) {
    const key = `${p.vehicle.id}/${p.part.id}`;
    groups.set(key, [...(groups.get(key) ?? []), p]);
  }
  return [...groups.values()].flatMap((group) => {
    const rating = group[0] && partRating(group[0]);
    if (rating === undefined) return [];
    const single = group.flatMap((p) => overRated(p, rating) ?? []);
    return single.length > 0 ? single : (overRatedTogether(group, rating) ?? []);
  });
}

/** The hardest pressed contact of a crib under a part that is narrower than its timber. */
function narrow(c: ReturnType<Workings['cribs']>[number], w: Workings): RuleFinding | undefined {
  const uses = cribUse(c, w).contacts;
  const found = c.contacts.flatMap((k, i) => {
    const load = uses[i]?.load;
    const bears = k.meets && partBearing(c, k.meets, w.plan.policy);
    return load === undefined || bears === undefined || k.meets === undefined || !over(load, bears)
      ? []
      : [
          {
            load,
            bears,
            met: k.meets,
            number: k.number,
            use: (load.value?.high ?? 0) / (bears.value?.low ?? 1),
          },
        ];
  });
  const worst = found.reduce<(typeof found)[number] | undefined>(
    (most, next) => (next.use > (most?.use ?? 0) ? next : most),
    undefined,
  );
  if (worst === undefined) return undefined;
  const subject = { element: c.crib.id };
  const beside = shownBeside(worst.load, worst.bears);
  return {
    subject,
    at: { ...subject, property: 'captures' },
    ...(worst.load.governs === undefined ? {} : { governs: worst.load.governs }),
    message: message('part-load.narrow', {
      crib: name(c.crib.name),
      contact: count(worst.number),
      part: name(worst.met.part.name),
      vehicle: name(worst.met.vehicle.name),
      load: beside.demand,
      capacity: beside.limit,
      governs: worst.load.governs ?? term('figure.as-built'),
      sum: calculation(worst.bears),
    }),
    figures: [worst.load, worst.bears],
    related: [{ at: worst.met.part.ref, message: term('part-load.part-here') }],
  };
}

export const rule: Rule = {
  id: 'part-load',
  title: term('part-load.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'plan',
  protects: term('part-load.protects'),
  sources: [practice, published('NDS 2018', '3.10.2, 3.10.4')],
  compares: ['load', 'rating', 'bears', 'asBuilt'],
  check: (w) => [...rated(w), ...w.cribs().flatMap((c) => narrow(c, w) ?? []), ...unknownStrength(w)],
};
