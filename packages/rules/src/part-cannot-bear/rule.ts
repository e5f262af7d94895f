import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import { captureFixes } from '@cribwright/engine/internal';
import { list, message, name, type Phrase, term } from '@cribwright/messages';
import type { Capture } from '@cribwright/model';
import { partNamed } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';
import { badBasePart } from './base-part.js';

interface Bearing {
  readonly element: string;
  readonly support: Phrase;
  readonly captures: readonly Capture[];
}

const bearings = ({ plan }: Workings): readonly Bearing[] => [
  ...plan.cribs.map((c) => ({
    element: c.id,
    support: elementMessage(plan, c.id),
    captures: c.captures,
  })),
  ...plan.stepChocks.map((c) => ({
    element: c.id,
    support: elementMessage(plan, c.id),
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
      message: message('part-cannot-bear.no-vehicle', {
        support: b.support,
        vehicle: name(capture.vehicle),
      }),
    };
  const part = partNamed(vehicle, capture.part);
  if (part?.mayBear === true) return undefined;
  const able = vehicle.parts.filter((p) => p.mayBear).map((p) => name(p.name));
  const advice =
    able.length === 0
      ? term('part-cannot-bear.none-bears')
      : message('part-cannot-bear.use-instead', { parts: list(able) });
  const shared = {
    support: b.support,
    part: name(part?.name ?? capture.part),
    vehicle: name(vehicle.name),
    advice,
  };
  // What lies over it comes first: the part of the same vehicle that may bear may be somewhere else.
  const crib = w.plan.cribs.find((c) => c.id === b.element);
  const above = crib === undefined ? [] : captureFixes(crib, w);
  const bearing = vehicle.parts.filter((p) => p.mayBear);
  const only = bearing.length === 1 ? bearing[0] : undefined;
  return {
    subject,
    at,
    message:
      part === undefined
        ? message('part-cannot-bear.no-part', shared)
        : message('part-cannot-bear.may-not-bear', {
            ...shared,
            ...(part.remark === undefined ? {} : { remark: name(part.remark) }),
          }),
    related: [],
    fixes:
      above.length > 0 || only === undefined || b.captures.length > 1
        ? above
        : [
            {
              title: message('part-cannot-bear.fix-part', { part: name(only.name) }),
              edits: [{ kind: 'set', at, text: only.id }],
              safe: false,
            },
          ],
  };
}

export const rule: Rule = {
  id: 'part-cannot-bear',
  title: term('part-cannot-bear.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'element',
  protects: term('part-cannot-bear.protects'),
  sources: [practice],
  compares: [],
  check: (w) => [
    ...bearings(w).flatMap((b) => b.captures.flatMap((c) => badPart(b, c, w) ?? [])),
    ...[...w.plan.cribs, ...w.plan.stepChocks].flatMap((s) => badBasePart(s, w)),
  ],
};
