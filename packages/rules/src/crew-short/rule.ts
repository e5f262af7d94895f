import type { Workings } from '@cribwright/engine';
import { busiest } from '@cribwright/engine/internal';
import { list, message, count as numberOf, term } from '@cribwright/messages';
import { exactly, given, measured } from '@cribwright/model';
import { count } from '@cribwright/model/internal';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function shortOfPeople(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  const { people, steps } = busiest(plan);
  const first = steps.find((s) => s.crew !== undefined);
  if (people === 0 || first === undefined) return [];
  const counted = [...plan.crews.map((c) => c.people), ...plan.units.flatMap((u) => u.people ?? [])];
  const needed = measured(
    count('crewPeak', term('figure.most-people-at-work-at-one-time'), 'up'),
    exactly(people),
    term('figure.crews-of-the-steps-under-way-at'),
  );
  const base = { subject: plan.ref, at: first.ref };
  if (counted.length === 0)
    return [
      {
        ...base,
        severity: 'note',
        message: message('crew-short.unknown', { needed: numberOf(people) }),
        figures: [needed],
      },
    ];
  const have = counted.reduce((sum, n) => sum + n, 0);
  if (people <= have) return [];
  const holes = { needed: numberOf(people), have: numberOf(have) };
  const come = given(count('people', term('figure.people-who-come'), 'down'), exactly(have), {
    kind: 'stated',
  });
  return [
    {
      ...base,
      message:
        steps.length === 1
          ? message('crew-short.one-step', { ...holes, step: numberOf(first.number) })
          : message('crew-short.short', { ...holes, steps: list(steps.map((s) => numberOf(s.number))) }),
      figures: [needed, come],
    },
  ];
}

export const rule: Rule = {
  id: 'crew-short',
  title: term('crew-short.title'),
  family: 'order and crew',
  severity: 'warning',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('crew-short.protects'),
  sources: [practice],
  compares: ['crewPeak', 'people'],
  check: shortOfPeople,
};
