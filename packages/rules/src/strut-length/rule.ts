import type { Workings } from '@cribwright/engine';
import { gearFixes, type StrutWorking } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exactly, given } from '@cribwright/model';
import { length } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function misfit(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { gear } = s.strut;
  const value = s.length.value;
  if (value === undefined) return undefined;
  const longest = gear.kind === 'rated strut' ? gear.longest : gear.timber.length;
  const shortest = gear.kind === 'rated strut' ? gear.shortest : 0;
  const long = exceeds(value.high, longest);
  if (!long && !exceeds(shortest, value.low)) return undefined;
  const end = long ? 'longest' : 'shortest';
  const limit = given(
    length(end, message(`figure.${end}-of`, { strut: name(gear.name) }), long ? 'down' : 'up', {
      ref: gear.ref,
    }),
    exactly(long ? longest : shortest),
    gear.kind === 'rated strut' ? gear.source : gear.timber.source,
  );
  const beside = shownBeside(s.length, limit, long ? 'most' : 'least');
  const shared = {
    strut: name(s.strut.name),
    length: beside.demand,
    sum: calculation(s.length),
    gear: name(gear.name),
  };
  return {
    subject: { element: s.strut.id },
    at: { element: s.strut.id, property: 'base' },
    message: long
      ? message('strut-length.too-long', { ...shared, longest: beside.limit })
      : message('strut-length.too-short', { ...shared, shortest: shown(limit) }),
    figures: [s.length, limit],
    fixes: gearFixes(s.strut, w.plan),
    ...(value.low === value.high
      ? {}
      : { governs: long ? term('figure.the-high-end-of-the-head') : term('figure.the-low-end-of-the-head') }),
  };
}

export const rule: Rule = {
  id: 'strut-length',
  title: term('strut-length.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'element',
  protects: term('strut-length.protects'),
  sources: [practice],
  compares: ['length', 'longest', 'shortest'],
  check: (w) => w.struts().flatMap((s) => misfit(s, w) ?? []),
};
