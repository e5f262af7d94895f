import { messages } from '../../finding/message.js';
import type { Capture } from '../../model/support.js';
import { partNamed } from '../../placed/part-place.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';
import { badBasePart } from './base-part.js';

const words = {
  'may-not-bear': '{support} is to bear on the {part} of the {vehicle}, which may not bear. {remark}{advice}',
  'no-part': '{support} is to bear on the {part}, and the {vehicle} has no such part. {advice}',
  'no-vehicle': '{support} is to bear on {vehicle}, which is not in this plan.',
  'use-instead': 'Parts that may bear: {parts}.',
  'none-bears': 'No part of it is known to bear.',
  'fix-part': 'Capture the {part} instead',
} as const;
const say = messages('part-cannot-bear', words);

interface Bearing {
  readonly element: string;
  readonly support: string;
  readonly captures: readonly Capture[];
}

const bearings = ({ plan }: Workings): readonly Bearing[] => [
  ...plan.cribs.map((c) => ({
    element: c.id,
    support: `crib ${c.name}`,
    captures: c.captures,
  })),
  ...plan.stepChocks.map((c) => ({
    element: c.id,
    support: `step chock ${c.name}`,
    captures: c.captures,
  })),
];

function badPart(b: Bearing, capture: Capture, w: Workings): RuleFinding | undefined {
  const at = { element: b.element, property: 'captures' };
  const subject = { element: b.element };
  const vehicle = w.vehicles.get(capture.vehicle);
  if (vehicle === undefined)
    return {
      subject,
      at,
      message: say('no-vehicle', {
        support: b.support,
        vehicle: capture.vehicle,
      }),
    };
  const part = partNamed(vehicle, capture.part);
  if (part?.mayBear === true) return undefined;
  const able = vehicle.parts.filter((p) => p.mayBear).map((p) => p.name);
  const advice = able.length === 0 ? say('none-bears', {}) : say('use-instead', { parts: able.join(', ') });
  const shared = {
    support: b.support,
    part: part?.name ?? capture.part,
    vehicle: vehicle.name,
    advice,
  };
  const bearing = vehicle.parts.filter((p) => p.mayBear);
  const only = bearing.length === 1 ? bearing[0] : undefined;
  return {
    subject,
    at,
    message:
      part === undefined
        ? say('no-part', shared)
        : say('may-not-bear', {
            ...shared,
            remark: part.remark === undefined ? '' : `${part.remark} `,
          }),
    related: [],
    fixes:
      only === undefined || b.captures.length > 1
        ? []
        : [
            {
              title: say('fix-part', { part: only.name }),
              edits: [{ kind: 'set', at, text: only.id }],
              safe: false,
            },
          ],
  };
}

export const rule: Rule = {
  id: 'part-cannot-bear',
  title: 'Support under a part that may not bear',
  family: 'timber and cribs',
  severity: 'danger',
  protects:
    'Sheet metal, tanks, moving parts and brackets fold or turn under a load that the frame would carry.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => [
    ...bearings(w).flatMap((b) => b.captures.flatMap((c) => badPart(b, c, w) ?? [])),
    ...[...w.plan.cribs, ...w.plan.stepChocks].flatMap((s) => badBasePart(s, w)),
  ],
};
