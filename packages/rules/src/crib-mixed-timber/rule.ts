import type { Workings } from '@cribwright/engine';
import { crossingStiffness } from '@cribwright/engine/internal';
import { type Message, message, name, quantity, term } from '@cribwright/messages';
import type { Crib } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

const alike = ({ timber: a }: Crib, { timber: b }: Crib) =>
  a.nominal === b.nominal && a.species === b.species && (a.wet === true) === (b.wet === true);

function what({ timber }: Crib): Message {
  const holes = { size: name(timber.nominal), species: name(timber.species) };
  return timber.wet === true
    ? message('crib-mixed-timber.timber-wet', holes)
    : message('crib-mixed-timber.timber', holes);
}

const stiffness = (c: Crib) => crossingStiffness(c.timber, c.courses);

function mixed(w: Workings): readonly RuleFinding[] {
  return w.plan.vehicles.flatMap((vehicle) => {
    const cribs = w.plan.cribs.filter(
      (c) => c.standsOn.kind !== 'vehicle' && c.captures.some((k) => k.vehicle === vehicle.id),
    );
    const first = cribs[0];
    if (first === undefined) return [];
    return cribs
      .filter((c) => !alike(c, first))
      .map((c) => ({
        subject: { element: c.id },
        at: { element: c.id, property: 'timber' },
        message: message('crib-mixed-timber.mixed', {
          first: name(first.name),
          second: name(c.name),
          vehicle: name(vehicle.name),
          one: what(first),
          other: what(c),
          times: times(stiffness(first), stiffness(c)),
        }),
        related: [
          { at: { element: first.id, property: 'timber' }, message: term('crib-mixed-timber.other-here') },
        ],
      }));
  });
}

const times = (a: number, b: number) => quantity('ratio', Math.max(a, b) / Math.min(a, b), 'up');

export const rule: Rule = {
  id: 'crib-mixed-timber',
  title: term('crib-mixed-timber.title'),
  family: 'timber and cribs',
  severity: 'note',
  judges: 'element',
  protects: term('crib-mixed-timber.protects'),
  sources: [practice],
  compares: [],
  check: mixed,
};
