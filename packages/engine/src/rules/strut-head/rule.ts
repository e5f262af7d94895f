import { shown, term } from '@cribwright/messages';
import { measured } from '../../figure/compute.js';
import { length } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { Strut } from '../../model/support.js';
import { partNamed, placeAt } from '../../placed/part-place.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  moves:
    'Strut {strut} has its head on the {part} of the {vehicle}, which moves. {remark}Put it on a frame rail or a joist.',
  'may-not-bear':
    'Strut {strut} has its head on the {part} of the {vehicle}, which may not bear. {remark}Put it on a frame rail or a joist.',
  'no-part':
    'Strut {strut} has its head on the {part}, and the {vehicle} has no such part. Parts that may bear: {parts}.',
  'no-vehicle': 'Strut {strut} has its head on {vehicle}, which is not in this plan.',
  beside: 'Strut {strut}: its head misses the {part} of the {vehicle} by {off}.',
} as const;
const say = messages('strut-head', words);

function badHead({ id, name, head }: Strut, w: Workings): RuleFinding | undefined {
  const vehicle = w.vehicles.get(head.vehicle);
  const subject = { element: id };
  const at = { element: id, property: 'head' };
  if (vehicle === undefined)
    return {
      subject,
      at,
      message: say('no-vehicle', { strut: name, vehicle: head.vehicle }),
    };
  const part = partNamed(vehicle, head.part);
  const shared = {
    strut: name,
    part: part?.name ?? head.part,
    vehicle: vehicle.name,
  };
  if (part === undefined) {
    const parts = vehicle.parts.filter((p) => p.mayBear && !p.moves).map((p) => p.name);
    return {
      subject,
      at,
      message: say('no-part', { ...shared, parts: parts.join(', ') || 'none' }),
    };
  }
  const remark = part.remark === undefined ? '' : `${part.remark} `;
  if (part.moves) return { subject, at, message: say('moves', { ...shared, remark }) };
  if (!part.mayBear) return { subject, at, message: say('may-not-bear', { ...shared, remark }) };
  const place = placeAt(vehicle, part, head);
  const reach = w.limit('joist reach').value?.low ?? 0;
  const miss = place === undefined ? undefined : Math.hypot(place.off.x, place.off.y);
  if (miss === undefined || miss <= reach + 1e-9) return undefined;
  const off = measured(
    length('off', term('figure.distance-to-the-part'), 'up'),
    exactly(miss),
    term('figure.from-the-head-to-the-edge-of'),
  );
  return {
    subject,
    at,
    message: say('beside', { ...shared, off: shown(off) }),
    figures: [off],
  };
}

export const rule: Rule = {
  id: 'strut-head',
  title: 'Strut head on a part that moves or may not bear',
  family: 'struts and ties',
  severity: 'danger',
  protects:
    'A head on a door, a hood, a sprung cab or sheet metal slips or tears out when the load comes on.',
  sources: [practice],
  compares: ['off'],
  words,
  check: (w) => w.plan.struts.flatMap((s) => badHead(s, w) ?? []),
};
