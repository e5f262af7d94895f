import type { Workings } from '@cribwright/engine';
import { list, message, name, shown, shownAs, term } from '@cribwright/messages';
import type { Strut } from '@cribwright/model';
import { exactly, measured, partNamed } from '@cribwright/model';
import { length, placeAt } from '@cribwright/model/internal';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function badHead(strut: Strut, w: Workings): RuleFinding | undefined {
  const { id, head } = strut;
  const vehicle = w.vehicles.get(head.vehicle);
  const subject = { element: id };
  const at = { element: id, property: 'head' };
  if (vehicle === undefined)
    return {
      subject,
      at,
      message: message('strut-head.no-vehicle', { strut: name(strut.name), vehicle: name(head.vehicle) }),
    };
  const part = partNamed(vehicle, head.part);
  const shared = {
    strut: name(strut.name),
    part: name(part?.name ?? head.part),
    vehicle: name(vehicle.name),
  };
  if (part === undefined) {
    const parts = vehicle.parts.filter((p) => p.mayBear && !p.moves).map((p) => name(p.name));
    return {
      subject,
      at,
      message: message('strut-head.no-part', {
        ...shared,
        advice:
          parts.length === 0
            ? term('strut-head.none-bears')
            : message('strut-head.use-instead', { parts: list(parts) }),
      }),
    };
  }
  const remark = part.remark === undefined ? {} : { remark: name(part.remark) };
  if (part.moves) return { subject, at, message: message('strut-head.moves', { ...shared, ...remark }) };
  if (!part.mayBear)
    return { subject, at, message: message('strut-head.may-not-bear', { ...shared, ...remark }) };
  const place = placeAt(vehicle, part, head);
  const limit = w.limit('joist reach');
  const reach = limit.value?.low ?? 0;
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
    message: message('strut-head.beside', { ...shared, off: shown(off), reach: shownAs(limit, reach) }),
    figures: [off],
  };
}

export const rule: Rule = {
  id: 'strut-head',
  title: term('strut-head.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'contact',
  protects: term('strut-head.protects'),
  sources: [practice],
  compares: ['off'],
  check: (w) => w.plan.struts.flatMap((s) => badHead(s, w) ?? []),
};
