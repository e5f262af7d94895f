import type { Vehicle, VehiclePosition } from '@cribwright/model';
import { planOf, vanTrailer } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { foot, inch } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import type { Check, Subject } from './check.js';
import { closedForm } from './sources.js';

/**
 * A box that lies on the ground, pushed at the height of its center: 30 ft long, 8 ft wide, 12 ft high, its center
 * 15 ft back and 46 in up as it stood. On its driver side that is 72 − 46 = 26 in toward the passenger side and
 * 48 in up; on its roof in the middle and 144 − 46 = 98 in up.
 */
const box = (position: VehiclePosition): Vehicle => ({
  ...vanTrailer,
  length: 30 * foot,
  width: 96 * inch,
  height: 144 * inch,
  position,
  axles: [],
  parts: [],
  cargo: [],
  statedWeight: { low: 12_000 * lb, high: 12_000 * lb },
  statedCenter: {
    x: { low: 15 * foot, high: 15 * foot },
    y: { low: 0, high: 0 },
    z: { low: 46 * inch, high: 46 * inch },
  },
});

/** Share of its weight that it holds, pushed one way. 0 is toward the rear, 6 toward the passenger side. */
const held = (position: VehiclePosition, friction: number, way: number) => () => {
  const plan = planOf({ vehicles: [box(position)] });
  const surface = { ...plan.ground.surface, frictionBody: { low: friction, high: friction + 0.2 } };
  const a = analyze({ ...plan, ground: { ...plan.ground, grade: 0, surface } }, { push: true });
  return a.push?.directions[way]?.share.value?.low ?? Number.NaN;
};

const row = (what: string, expected: number, derivation: string, computed: () => number): Check => ({
  what,
  source: closedForm(derivation),
  expected,
  within: 1e-9,
  unit: 'W',
  computed,
});

const side = { kind: 'on its side', side: 'driver' } as const;
const roof = { kind: 'on its roof' } as const;

export const subject: Subject = {
  subject: 'A vehicle on its side or roof, pushed',
  checks: [
    ...[0, 5, 6, 18].map((way) =>
      row(
        `on its side, friction 0.2 to 0.4, pushed at ${15 * way} deg`,
        0.2,
        'it slides at μ W, the low end',
        held(side, 0.2, way),
      ),
    ),
    row(
      'on its side, friction 3, pushed toward the passenger side',
      46 / 48,
      'it tips at W × (72 − 26) ÷ 48',
      held(side, 3, 6),
    ),
    row(
      'on its side, friction 3, pushed toward the driver side',
      98 / 48,
      'it tips at W × (72 + 26) ÷ 48',
      held(side, 3, 18),
    ),
    row(
      'on its other side, friction 3, pushed toward the driver side',
      46 / 48,
      'the mirror image of the first',
      held({ kind: 'on its side', side: 'passenger' }, 3, 18),
    ),
    row('on its roof, friction 0.25, pushed to a side', 0.25, 'it slides at μ W', held(roof, 0.25, 6)),
    row(
      'on its roof, friction 3, pushed to a side',
      48 / 98,
      'it tips at W × half its width ÷ height of the center',
      held(roof, 3, 6),
    ),
    row(
      'on its roof, friction 3, pushed toward the rear',
      180 / 98,
      'it tips at W × (30 ft − 15 ft) ÷ height of the center',
      held(roof, 3, 0),
    ),
  ],
};
