import type { Fix, Workings } from '@cribwright/engine';
import {
  anchorFix,
  mirrorFix,
  nameOf,
  opposite,
  strapFixes,
  towardWords,
  twinFixes,
  type VehicleRose,
} from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import type { Ref } from '@cribwright/model';
import { exceeds } from '@cribwright/units';
import { fromMemory, practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

/** One vehicle, wherever it stands in the text. */
function judge(w: Workings, { vehicle, rose }: VehicleRose): RuleFinding | undefined {
  const subject = { element: vehicle };
  if ('why' in rose)
    return {
      subject,
      at: subject,
      severity: 'warning',
      couldNotRun: true,
      message: message('push-margin.unknown', { why: rose.why }),
    };
  const limit = w.limit('push margin');
  const least = rose.directions.reduce((a, b) =>
    (b.share.value?.low ?? 0) < (a.share.value?.low ?? 0) ? b : a,
  );
  const [may, held] = [limit.value?.high, least.share.value?.low];
  if (may === undefined || held === undefined || !exceeds(may, held)) return undefined;
  const beside = shownBeside(least.share, limit, 'least');
  return {
    subject,
    at: subject,
    message: message('push-margin.too-little', {
      toward: towardWords(least.angle),
      height: shown(rose.height),
      vehicle: name(nameOf(w, vehicle)),
      share: beside.demand,
      sum: calculation(least.share),
      limit: beside.limit,
      ...(least.givesFirst === undefined
        ? {}
        : { first: message('push-margin.first', { how: least.givesFirst.how }) }),
    }),
    figures: [least.share, least.holds, rose.height, ...(rose.grip === undefined ? [] : [rose.grip]), limit],
    related: [
      ...(least.givesFirst === undefined
        ? []
        : [
            {
              at: least.givesFirst.ref,
              message: message('push-margin.first', { how: least.givesFirst.how }),
            },
          ]),
      ...(limit.ref === undefined
        ? []
        : [{ at: limit.ref, message: message('push-margin.set-here', { limit: shown(limit) }) }]),
    ],
    fixes: [...fixesFor(least.givesFirst?.ref, w), ...anchorFix(vehicle, least.angle, w)],
    governs: least.share.governs ?? towardWords(least.angle),
  };
}

/** Where the base of a strut slides first, straps to it; else what struts that stand alone lack on the other side, or more. */
function fixesFor(first: Ref | undefined, w: Workings): readonly Fix[] {
  const strut = w.plan.struts.find((s) => s.id === first?.element && first.property === 'base');
  const alone = w.plan.struts.filter((s) => opposite(s, w.plan, w.vehicles) === undefined);
  const [any] = w.plan.struts;
  if (strut !== undefined) return [...strapFixes(strut, w), ...twinFixes(strut, w)];
  return alone.length > 0 || any === undefined ? alone.flatMap((s) => mirrorFix(s, w)) : twinFixes(any, w);
}

export const rule: Rule = {
  id: 'push-margin',
  title: term('push-margin.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('push-margin.protects'),
  sources: [
    practice,
    published('FEMA Rescue Specialist course', 'Module 1A: 10 % of the vertical load, sideways'),
    fromMemory('limit analysis: a distribution that balances and breaks no limit is a lower bound'),
  ],
  compares: ['push held ÷ weight', 'push margin'],
  // Heavy: it runs when the push is asked for, and a view that did not ask shows no push at all.
  check: (w) => (w.options.push === true ? w.pushes().flatMap((rose) => judge(w, rose) ?? []) : []),
};
