import { crossingStiffness } from '../../crib/stiffness.js';
import { messages } from '../../finding/message.js';
import type { Crib } from '../../model/support.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  mixed:
    'Cribs {first} and {second} hold the {vehicle} and differ in timber ({one} and {other}). The stiffer takes {times} times as much for the same settling. Build both of the same, or look at their loads.',
  'other-here': 'The other one is here.',
} as const;
const say = messages('crib-mixed-timber', words);

const what = ({ timber }: Crib) => `${timber.nominal} ${timber.species}${timber.wet ? ', wet' : ''}`;
const stiffness = (c: Crib) => crossingStiffness(c.timber, c.courses);

function mixed(w: Workings): readonly RuleFinding[] {
  return w.plan.vehicles.flatMap((vehicle) => {
    const cribs = w.plan.cribs.filter(
      (c) => c.standsOn.kind !== 'vehicle' && c.captures.some((k) => k.vehicle === vehicle.id),
    );
    const first = cribs[0];
    if (first === undefined) return [];
    return cribs
      .filter((c) => what(c) !== what(first))
      .map((c) => ({
        subject: { element: c.id },
        at: { element: c.id, property: 'timber' },
        message: say('mixed', {
          first: first.name,
          second: c.name,
          vehicle: vehicle.name,
          one: what(first),
          other: what(c),
          times: times(stiffness(first), stiffness(c)),
        }),
        related: [{ at: { element: first.id, property: 'timber' }, message: say('other-here', {}) }],
      }));
  });
}

const times = (a: number, b: number): string => (Math.max(a, b) / Math.min(a, b)).toFixed(1);

export const rule: Rule = {
  id: 'crib-mixed-timber',
  title: 'Cribs of different timber under one vehicle',
  family: 'timber and cribs',
  severity: 'note',
  protects: 'The stiffer crib takes the load that the softer one was to share.',
  sources: [practice],
  compares: [],
  words,
  check: mixed,
};
