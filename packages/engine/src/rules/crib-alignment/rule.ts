import { shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { measured } from '../../figure/compute.js';
import { angle, length } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import { partNamed, placeAt } from '../../placed/part-place.js';
import { undersideSlope } from '../../placed/underside.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'off-line':
    'Crib {crib} contact {contact} stands {off} off the {part} of the {vehicle} beneath it. More than {most} off line, the load does not go straight down. Move the crib over it.',
  'no-part-below': 'Crib {crib} is to stand on the {part}, and the {vehicle} has no such part.',
  sloped:
    'Crib {crib}: the {part} of the {vehicle} lies {slope} off level. Above {most} it slides off a flat crib. Fill the angle with wedges or a sloped top, and tie it.',
} as const;
const say = messages('crib-alignment', words);

/** A crib on a frame: each of its bottom contacts over the part that carries it. */
function offLine(c: CribWorking, w: Workings): RuleFinding | undefined {
  const { crib } = c;
  const stand = crib.standsOn;
  if (stand.kind !== 'vehicle') return undefined;
  const vehicle = w.vehicles.get(stand.vehicle);
  const part = vehicle === undefined ? undefined : partNamed(vehicle, stand.part);
  const subject = { element: crib.id };
  const at = { element: crib.id, property: 'stands on' };
  const shared = { crib: crib.name, part: part?.name ?? stand.part, vehicle: vehicle?.name ?? stand.vehicle };
  if (vehicle === undefined || part === undefined)
    return { subject, at, severity: 'danger', message: say('no-part-below', shared) };
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
    message: say('off-line', {
      ...shared,
      contact: `${worst.number}`,
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
    message: say('sloped', {
      crib: c.crib.name,
      part: met.part.name,
      vehicle: met.vehicle.name,
      slope: beside.demand,
      most: beside.limit,
    }),
    figures: [slope, most],
  };
}

export const rule: Rule = {
  id: 'crib-alignment',
  title: 'Contacts out of line, or a sloped capture',
  family: 'timber and cribs',
  severity: 'warning',
  protects: 'A load that does not go straight down bends the timbers and pushes the crib over.',
  sources: [practice],
  compares: ['off', 'contact alignment', 'slope', 'steepest capture'],
  words,
  check: (w) => w.cribs().flatMap((c) => [offLine(c, w) ?? [], sloped(c, w) ?? []].flat()),
};
