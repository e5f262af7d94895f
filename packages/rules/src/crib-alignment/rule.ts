import type { Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { count, message, name, shownBeside, term } from '@cribwright/messages';
import { exactly, measured, partNamed } from '@cribwright/model';
import { angle, length, placeAt, undersideSlope } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** A crib on a frame: each of its bottom contacts over the part that carries it. */
function offLine(c: CribWorking, w: Workings): RuleFinding | undefined {
  const { crib } = c;
  const stand = crib.standsOn;
  if (stand.kind !== 'vehicle') return undefined;
  const vehicle = w.vehicles.get(stand.vehicle);
  const part = vehicle === undefined ? undefined : partNamed(vehicle, stand.part);
  const subject = { element: crib.id };
  const at = { element: crib.id, property: 'stands on' };
  const shared = {
    crib: name(crib.name),
    part: name(part?.name ?? stand.part),
    vehicle: name(vehicle?.name ?? stand.vehicle),
  };
  if (vehicle === undefined || part === undefined)
    return { subject, at, severity: 'danger', message: message('crib-alignment.no-part-below', shared) };
  // Contacts that carry must have the part below them; the others only keep the crib together.
  const bearing = c.contacts.filter((k) => k.loaded);
  const worst = (bearing.length > 0 ? bearing : c.contacts).reduce(
    (most, k) => {
      const place = placeAt(vehicle, part, k);
      const off = place === undefined ? 0 : Math.hypot(place.off.x, place.off.y);
      return off > most.off ? { off, number: k.number } : most;
    },
    { off: 0, number: 0 },
  );
  const most = w.limit('contact alignment');
  if (!exceeds(worst.off, most.value?.low ?? 0)) return undefined;
  const off = measured(
    length('off', term('figure.off-the-part-beneath'), 'up'),
    exactly(worst.off),
    term('figure.from-the-contact-to-the-edge-of'),
  );
  const beside = shownBeside(off, most);
  return {
    subject,
    at,
    message: message('crib-alignment.off-line', {
      ...shared,
      contact: count(worst.number),
      off: beside.demand,
      most: beside.limit,
    }),
    figures: [off, most],
  };
}

function sloped(c: CribWorking, w: Workings): RuleFinding | undefined {
  const met = c.contacts.flatMap((k) => k.meets ?? [])[0];
  if (met === undefined) return undefined;
  const value = undersideSlope(met.vehicle, w.plan.ground);
  const most = w.limit('steepest capture');
  if (!exceeds(value, most.value?.low ?? 0)) return undefined;
  const slope = measured(
    angle('slope', term('figure.slope-of-the-captured-part'), 'up'),
    exactly(value),
    term('figure.pitch-of-the-vehicle-and-grade-of'),
  );
  const beside = shownBeside(slope, most);
  return {
    subject: { element: c.crib.id },
    at: { element: c.crib.id, property: 'captures' },
    severity: 'danger',
    message: message('crib-alignment.sloped', {
      crib: name(c.crib.name),
      part: name(met.part.name),
      vehicle: name(met.vehicle.name),
      slope: beside.demand,
      most: beside.limit,
    }),
    figures: [slope, most],
  };
}

export const rule: Rule = {
  id: 'crib-alignment',
  title: term('crib-alignment.title'),
  family: 'timber and cribs',
  severity: 'warning',
  judges: 'contact',
  protects: term('crib-alignment.protects'),
  sources: [practice],
  compares: ['off', 'contact alignment', 'slope', 'steepest capture'],
  check: (w) => w.cribs().flatMap((c) => [offLine(c, w) ?? [], sloped(c, w) ?? []].flat()),
};
